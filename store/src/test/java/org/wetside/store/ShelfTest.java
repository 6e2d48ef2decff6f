package org.wetside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;
import org.wetside.core.thermal.ThermometerOffset;

/** Bottles, tanks and thermometers in a real file. All contents are invented. */
class ShelfTest {
  private static final Instant NOW = Instant.parse("2026-01-10T18:00:00Z");

  @TempDir Path folder;
  private Database database;

  @BeforeEach
  void open() {
    database = Database.open(folder.resolve("wetside.db"));
  }

  @AfterEach
  void close() {
    database.close();
  }

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }

  private static BottleLabel label(String letter, boolean oneShot) {
    return BottleLabel.of(letter, "D-76", BottleRole.STOCK, BathKind.DEVELOPER, ml(1000))
        .with(oneShot ? AfterPouring.ONE_SHOT : AfterPouring.REUSED)
        .withDays(Optional.of(LocalDate.of(2026, 1, 2)), Optional.empty());
  }

  private static List<FilmUse> rolls(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(n -> new FilmUse("R-" + n, "an invented film", UnitOfUse.ONE_ROLL, false))
        .toList();
  }

  private void write(Consumer<Session> work) {
    database.change(work);
  }

  private List<LedgerLine> book(String letter) {
    return database.read(session -> new Bottles(session).ledger(letter));
  }

  private List<Tank> tanks() {
    return database.read(session -> new Tanks(session).all());
  }

  private Optional<Tank> tank(String name) {
    return database.read(session -> new Tanks(session).find(name));
  }

  private Optional<StockMinimum> minimum(String developer) {
    return database.read(session -> new OwnStockMinima(session).find(developer));
  }

  private Optional<Bottle> bottle(String letter) {
    return database.read(session -> new Bottles(session).find(letter));
  }

  @Test
  void aBottleComesBackAsItWasPutThere() {
    write(session -> new Bottles(session).add(label("a", true), ml(800), NOW));
    Bottle found = bottle("A").orElseThrow();
    assertThat(found.label()).isEqualTo(label("A", true));
    assertThat(found.left()).isEqualTo(ml(800));
    assertThat(found.fullness()).isEqualTo(0.8);
    assertThat(found.lastTouched()).isEqualTo(NOW);
  }

  @Test
  void aRunTakesOutAndPoursBackInOneTransaction() {
    write(session -> new Bottles(session).add(label("B", false), ml(1000), NOW));
    Volume shortBy =
        database.inTransaction(
            session -> {
              BottlesInRun bottles = new BottlesInRun(session);
              Volume lacking = bottles.debit("B", ml(600), rolls(2), "run-7", NOW, NOW);
              bottles.giveBack("B", ml(580), "run-7", NOW, NOW);
              return lacking;
            });
    assertThat(shortBy).isEqualTo(Volume.ZERO);
    Bottle after = bottle("B").orElseThrow();
    assertThat(after.left()).isEqualTo(ml(980));
    assertThat(after.film()).isEqualTo(UnitOfUse.ofRolls(2));
    assertThat(book("B")).extracting(LedgerLine::run).containsExactly("", "run-7", "run-7");
  }

  @Test
  void whatFailsHalfWayDebitsNothing() {
    write(session -> new Bottles(session).add(label("C", true), ml(1000), NOW));
    assertThatThrownBy(
            () ->
                write(
                    session -> {
                      new BottlesInRun(session).debit("C", ml(300), rolls(1), "run-8", NOW, NOW);
                      throw new IllegalStateException("the run could not be written");
                    }))
        .isInstanceOf(IllegalStateException.class);
    assertThat(bottle("C").orElseThrow().left()).isEqualTo(ml(1000));
  }

  @Test
  void aBookThatSaysTooLittleNeverStopsARun() {
    write(session -> new Bottles(session).add(label("D", true), ml(100), NOW));
    Volume shortBy =
        database.inTransaction(
            session -> new BottlesInRun(session).debit("D", ml(150), rolls(1), "run-9", NOW, NOW));
    assertThat(shortBy).isEqualTo(ml(50));
    assertThat(bottle("D").orElseThrow().left()).isEqualTo(Volume.ZERO);
    assertThat(book("D").get(1).note()).contains("100 mL", "150 mL");
  }

  @Test
  void aDiscardedBottleFreesItsLetterAndKeepsItsBook() {
    write(session -> new Bottles(session).add(label("E", true), ml(500), NOW));
    assertThatThrownBy(
            () -> write(session -> new Bottles(session).add(label("e", true), ml(500), NOW)))
        .isInstanceOf(StoreException.class);
    LedgerLine poured = LedgerLine.byHand(NOW, "brown, to collection", new BottleEvent.Discarded());
    write(session -> new Bottles(session).enter("E", poured));
    assertThat(bottle("E")).isEmpty();
    write(session -> new Bottles(session).add(label("E", false), ml(900), NOW));
    assertThat(bottle("E").orElseThrow().left()).isEqualTo(ml(900));
    List<Long> lines =
        database.read(
            session ->
                session.list("SELECT count(*) AS n FROM bottle_line", row -> row.whole("n")));
    assertThat(lines).containsExactly(3L);
  }

  @Test
  void nobodyTakesFromABottleThatIsNotThere() {
    assertThatThrownBy(
            () ->
                write(
                    session ->
                        new BottlesInRun(session).debit("Z", ml(1), List.of(), "", NOW, NOW)))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("bottle Z");
  }

  /** Whatever is entered, what is left equals the sum of the book and is never below 0. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void whatIsLeftIsTheSumOfTheBook(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    write(session -> new Bottles(session).add(label("F", false), ml(1000), NOW));
    for (int i = 0; i < 20; i++) {
      double volume = random.nextInt(0, 400);
      boolean takes = random.nextBoolean();
      write(
          session -> {
            BottlesInRun bottles = new BottlesInRun(session);
            if (takes) {
              bottles.debit("F", ml(volume), List.of(), "", NOW, NOW);
            } else {
              bottles.giveBack("F", ml(volume), "", NOW, NOW);
            }
          });
    }
    double left = bottle("F").orElseThrow().left().millilitres();
    assertThat(left).isNotNegative();
    assertThat(Bottle.of(label("F", false), book("F"))).isEqualTo(bottle("F").orElseThrow());
    List<String> complaints = database.read(session -> new LedgerCheck(session).complaints());
    assertThat(complaints).isEmpty();
  }

  @Test
  void aTankComesBackWithItsRooms() {
    Tank tank =
        new Tank(
            "two reels",
            Vessel.SMALL_TANK,
            List.of(
                new Tank.Room(FilmFormat.MEDIUM, 1, ml(500)),
                new Tank.Room(FilmFormat.SMALL, 2, ml(300))),
            ml(650));
    write(session -> new Tanks(session).put(tank));
    write(session -> new Tanks(session).put(tank));
    assertThat(tanks()).containsExactly(tank);
    assertThat(tank("TWO REELS")).hasValue(tank);
    boolean removed = database.inTransaction(session -> new Tanks(session).remove("two reels"));
    assertThat(removed).isTrue();
    assertThat(tanks()).isEmpty();
  }

  @Test
  void theLastComparisonOfAThermometerCountsAndTheOthersAreKept() {
    ThermometerOffset ice = offset(-0.4, 0);
    ThermometerOffset twenty = offset(-0.2, 20);
    write(
        session -> {
          Thermometers thermometers = new Thermometers(session);
          thermometers.add("glass");
          thermometers.compared("glass", ice);
          thermometers.compared("Glass", twenty);
        });
    assertThat(
            database
                .read(session -> new Thermometers(session).find("glass"))
                .orElseThrow()
                .offset())
        .hasValue(twenty);
    List<ThermometerOffset> history =
        database.read(session -> new Thermometers(session).history("glass"));
    assertThat(history).containsExactly(twenty, ice);
  }

  private static ThermometerOffset offset(double correction, double at) {
    return new ThermometerOffset(
        TemperatureDifference.ofKelvins(correction),
        Temperature.ofCelsius(at),
        TemperatureDifference.ofKelvins(0.1),
        LocalDate.of(2026, 1, 3),
        "melting ice");
  }

  @Test
  void anOwnMinimumReplacesTheOlderOne() {
    StockMinimum six = new StockMinimum(ml(6), Standing.PUBLISHED, Citation.of("leaflet 2024"));
    StockMinimum eight = new StockMinimum(ml(8), Standing.PUBLISHED, Citation.of("leaflet 2025"));
    write(
        session -> {
          new OwnStockMinima(session).put("Brown", six);
          new OwnStockMinima(session).put("brown", eight);
        });
    assertThat(minimum("BROWN")).hasValue(eight);
    assertThat(minimum("other")).isEmpty();
  }
}
