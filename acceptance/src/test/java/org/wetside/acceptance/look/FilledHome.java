package org.wetside.acceptance.look;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SentEvent;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.formula.WeighOut;
import org.wetside.app.home.Home;
import org.wetside.app.waste.PourWaste;
import org.wetside.core.bath.BathKind;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.run.MishapAdvice;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Sighting;
import org.wetside.core.trial.TrialKind;
import org.wetside.core.waste.Jug;
import org.wetside.core.waste.WasteKind;

/**
 * A home that has been lived in, made by the use cases that a person uses: the invented kitchen
 * with its evenings and a run that goes on, and beside it a batch half mixed, bottles with books
 * and tests, rolls to be fixed again, jugs with waste in them. All of it is invented.
 */
final class FilledHome {
  /** The run that goes on. */
  static final long RUNNING = 3;

  /** The load that is still to come. */
  static final long PLANNED = 4;

  private static final Clock REAL = Clock.system(ZoneId.systemDefault());

  private final Wetside wetside;

  private FilledHome(Wetside wetside) {
    this.wetside = wetside;
  }

  /** Fills an empty folder; the home is open. */
  static Wetside in(Path folder) {
    FilledHome home = new FilledHome(FillDemo.into(new Home(folder), REAL));
    home.bottles();
    home.tests();
    home.batch();
    home.waste();
    return home.wetside;
  }

  private void bottles() {
    fixer("G");
    fixer("H");
    wetside.turnFixers().pair("G", "H");
    wetside
        .addBottle()
        .add(
            BottleLabel.of("X", "XTOL", BottleRole.STOCK, BathKind.DEVELOPER, ml(5000))
                .withDays(Optional.of(LocalDate.now(REAL).minusDays(700)), Optional.empty())
                .withOwner("the harbour club")
                .withNote("behind the flour"),
            ml(4200));
    wetside.changeBottle().take("X", ml(200), "for a leader");
    wetside.changeBottle().topUp("X", ml(20), ml(40), "by the leaflet");
    wetside.changeBottle().correct("X", ml(3900), "looked: some was spilled");
    wetside
        .addBottle()
        .add(
            BottleLabel.of("O", "old fixer", BottleRole.WORKING, BathKind.FIXER, ml(600)), ml(600));
    wetside.changeBottle().discard("O", "to the collection");
  }

  private void fixer(String letter) {
    wetside
        .addBottle()
        .add(
            BottleLabel.of(letter, "rapid fixer", BottleRole.WORKING, BathKind.FIXER, ml(1000))
                .withDilution("1+4"),
            ml(1000));
  }

  /** A baseline and a later time of G, a test that runs, and a fixer that failed. */
  private void tests() {
    clip(45, true);
    clip(60, false);
    wetside.bathTests().startTest().of("H", TrialKind.IODIDE, Optional.empty());
    wetside.bathTests().judgeTest().madeOfFilm(List.of("TM-01"), Sighting.BAD, "a brown spot");
    wetside
        .bench()
        .take(
            RUNNING,
            new SentEvent(
                "filled-home-mishap",
                Optional.of(0),
                new Happening.Mishap(
                    MishapAdvice.WRONG_BOTTLE, "decide about both", Optional.empty(), "F"),
                wetside.clock().instant(),
                "laptop at the sink",
                ""));
    wetside.changeBottle().tested("F", BathTest.CLIP, false, "still milky after two minutes");
    wetside.readRecall().setOwner("TM-02", "the harbour club");
  }

  private void clip(int seconds, boolean fresh) {
    wetside
        .bathTests()
        .judgeTest()
        .made(
            "G",
            TrialKind.CLEARING,
            Optional.of(new ClipWish("TRI-X 400", "1+4", Temperature.ofCelsius(20), fresh)),
            Duration.ofSeconds(seconds),
            Sighting.GOOD,
            "");
  }

  private void batch() {
    Batch begun =
        wetside
            .mixBatch()
            .begin(
                new WeighOut.Question(
                    "D-76",
                    Optional.of(ml(700)),
                    List.of("sodium sulfite heptahydrate"),
                    Optional.empty(),
                    Optional.empty()));
    wetside.mixBatch().done(begun.id(), 1, "525mL");
    wetside.mixBatch().done(begun.id(), 2, "1.5g");
  }

  private void waste() {
    wetside.wasteBook().keepJugs().add(new Jug("W1", WasteKind.SILVER, ml(5000)));
    wetside.wasteBook().keepJugs().add(new Jug("W 2", WasteKind.OTHER, ml(2000)));
    pour("W1", "F-24", Optional.of(BathKind.FIXER), 900);
    wetside
        .wasteBook()
        .handIn()
        .handIn("W1", LocalDate.now(REAL), "the collection at the quay", "");
    pour("W1", "F-24", Optional.of(BathKind.FIXER), 1200);
    pour("W1", "wash water of an unknown powder", Optional.of(BathKind.FIXER), 300);
  }

  private void pour(String jug, String what, Optional<BathKind> bath, double millilitres) {
    wetside
        .wasteBook()
        .pourWaste()
        .byHand(jug, new PourWaste.ByHand(what, bath, ml(millilitres), ""));
  }

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }
}
