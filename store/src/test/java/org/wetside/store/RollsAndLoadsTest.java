package org.wetside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.BathKind;
import org.wetside.core.development.Band;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollLine;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

class RollsAndLoadsTest {
  private static final Instant NOW = Instant.parse("2026-01-15T20:03:00Z");

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

  @Test
  void aRollReadsBackAsItWasWritten() {
    Roll roll = roll("TM-01", "135 36 TRI-X @3200 \"lock gate\" on 2026-01-09 precious");
    keep(roll);
    assertThat(database.<Optional<Roll>>read(s -> new Rolls(s).find("tm-01"))).contains(roll);
  }

  @Test
  void aNumberIsGivenOnce() {
    keep(roll("TM-01", "135 TRI-X"));
    assertThatThrownBy(() -> keep(roll("tm-01", "120 TRI-X"))).isInstanceOf(StoreException.class);
    assertThat(database.<Set<String>>read(s -> new Rolls(s).numbers())).containsExactly("TM-01");
  }

  @Test
  void aRollIsFoundByAnyWordOfItsRecord() {
    keep(roll("TM-01", "135 36 TRI-X 400 @3200 \"Schleusentor im Winter\""));
    keep(roll("TM-02", "120 T-MAX 100 @100 \"mill wheel\""));
    database.change(
        s ->
            new RollSearch(s)
                .keepRecord("TM-02", "D-76 1+1", "2026-01-15 Double bottle F lid came off"));
    assertThat(find("schleus")).containsExactly("TM-01");
    assertThat(find("t-max wheel")).containsExactly("TM-02");
    assertThat(find("lid came off")).containsExactly("TM-02");
    assertThat(find("2026-01-15")).containsExactly("TM-02");
    assertThat(find("D-76")).containsExactly("TM-02");
    assertThat(find("wheel gate")).isEmpty();
    assertThat(find("\" OR *")).isEmpty();
  }

  @Test
  void aLoadReadsBackAsItWasWritten() {
    keep(roll("TM-01", "135 TRI-X @400"));
    keep(roll("TM-02", "135 TRI-X @400"));
    Load kept = database.inTransaction(s -> new Loads(s).add(load()));
    assertThat(database.<Optional<Load>>read(s -> new Loads(s).find(kept.id()))).contains(kept);
    assertThat(database.<List<Load>>read(s -> new Loads(s).of("TM-02"))).containsExactly(kept);
    Load running = kept.withState(LoadState.RUNNING);
    database.change(s -> new Loads(s).change(running));
    assertThat(database.<List<Load>>read(s -> new Loads(s).in(LoadState.RUNNING)))
        .containsExactly(running);
    assertThat(database.<List<Load>>read(s -> new Loads(s).in(LoadState.PLANNED))).isEmpty();
  }

  @Test
  void processedRollsCarryTheirMoment() {
    keep(roll("TM-01", "135 TRI-X @400"));
    database.change(s -> new Rolls(s).markProcessed(List.of("TM-01"), NOW));
    assertThat(database.<List<Roll>>read(s -> new Rolls(s).in(RollState.PROCESSED)))
        .singleElement()
        .satisfies(roll -> assertThat(roll.processedAt()).contains(NOW));
  }

  private void keep(Roll roll) {
    database.change(
        s -> {
          new Rolls(s).add(roll);
          new RollSearch(s).describe(roll);
        });
  }

  private List<String> find(String words) {
    return database.read(s -> new RollSearch(s).find(words));
  }

  private static Roll roll(String number, String line) {
    return new Roll(
        number,
        RollLine.parse(line).withNumber(number),
        Optional.of("400TX"),
        NOW,
        RollState.WAITING,
        Optional.empty());
  }

  private static Load load() {
    return new Load(
        0,
        LoadState.PLANNED,
        NOW,
        List.of(
            new Load.Place(
                "TM-01", Optional.of(Duration.ofSeconds(585)), Optional.of(Standing.PUBLISHED)),
            new Load.Place("TM-02", Optional.empty(), Optional.empty())),
        "Double",
        "small-tank",
        new Recipe("D-76", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
        new ChosenTime(
            Duration.ofSeconds(590),
            Standing.COMPUTED,
            "shared by two rolls",
            Optional.of(new Band(Duration.ofSeconds(550), Duration.ofSeconds(620)))),
        Volume.ofMillilitres(600),
        Map.of(BathKind.DEVELOPER, "D", BathKind.FIXER, "F"),
        Optional.of(NOW),
        "");
  }
}
