package org.wetside.app.testroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.curves.PieceReader;
import org.wetside.app.curves.ReadCurve;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.sensitometry.Measure;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.PlannedFrame;
import org.wetside.core.testroll.TestRoll;
import org.wetside.core.testroll.TestStep;
import org.wetside.core.testroll.TypedReading;

/** One roll over weeks, in a home that is closed and opened again. Densities are invented. */
class KeepTestRollsTest {
  private static final Instant NOW = Instant.parse("2026-01-10T10:00:00Z");
  private static final LocalDate DAY = LocalDate.of(2026, 1, 20);

  /** Base plus fog, and a softplus of gradient 0.60 whose foot lies at log H −2.50. */
  private static final double FOG = 0.25;

  private static final double GRADIENT = 0.60;
  private static final double TOE = 0.12;
  private static final double FOOT = -2.50;

  @TempDir Path home;
  private Wetside wetside;

  @BeforeEach
  void open() {
    wetside = Wetside.open(home, Clock.fixed(NOW, ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  private void again() {
    wetside.close();
    open();
  }

  private KeepTestRolls rolls() {
    return wetside.sensitometry().keepTestRolls();
  }

  private static TestRoll roll() {
    return new TestRollReader(Units.METRIC)
        .requireComplete(
            new TestRollDraft(
                "TRI-X 400",
                "400",
                "D-76",
                "1+1",
                "20",
                "small",
                "1/60@f8",
                "8:00",
                "",
                "",
                "",
                "",
                ""));
  }

  private static double density(PlannedFrame frame) {
    if (frame.relativeLogH().isEmpty()) {
      return FOG;
    }
    // what a meter asks for at index 400: 8/400 lux seconds (SE-S40)
    double logH = Math.log10(8.0 / 400) + frame.relativeLogH().getAsDouble();
    return FOG + GRADIENT * TOE * Math.log1p(Math.exp((logH - FOOT) / TOE));
  }

  private static List<TypedReading> readings(KeptTestRoll kept, int piece) {
    List<TypedReading> readings = new ArrayList<>();
    for (PlannedFrame frame : kept.framesToRead(piece)) {
      String read = String.format(Locale.ROOT, "%.3f", density(frame));
      readings.add(new TypedReading(frame.frame(), read, read));
    }
    return readings;
  }

  private KeptTestRoll developed(int piece) {
    long id = rolls().begin(roll()).id();
    return rolls()
        .develop(id, piece, new PieceDeveloped(Duration.ofSeconds(490), Optional.empty(), DAY), "");
  }

  @Test
  void aRollOutlivesTheProgramBetweenAnyTwoSteps() {
    long id = rolls().begin(roll()).id();
    rolls().tick(id, TestStep.LEADER, "L 104 mm");
    again();
    rolls().tick(id, TestStep.GAUGE, "");
    rolls().tick(id, TestStep.CARD, "");
    rolls().untick(id, TestStep.CARD);
    again();
    KeptTestRoll kept = rolls().find(id).orElseThrow();
    assertThat(kept.roll()).isEqualTo(roll());
    assertThat(kept.next()).contains(TestStep.CARD);
    assertThat(kept.done())
        .hasEntrySatisfying(TestStep.LEADER, done -> assertThat(done.note()).isEqualTo("L 104 mm"));
    rolls().type(id, List.of(new TypedReading(2, "0.3l", "")));
    again();
    assertThat(rolls().find(id).orElseThrow().typedFor(2).first()).isEqualTo("0.3l");
    assertThat(rolls().putAway(id)).isTrue();
    assertThat(rolls().all()).isEmpty();
  }

  @Test
  void aPieceBecomesACurveOfWhatItWasReallyDoneWith() {
    KeptTestRoll kept = developed(2);
    kept = rolls().type(kept.id(), readings(kept, 2));
    FilmStrip strip = new PieceReader(wetside.densitometry()).read(kept, 2, "").orElseThrow();
    assertThat(strip.time()).isEqualTo(Duration.ofSeconds(490));
    assertThat(strip.developedOn()).contains(DAY);
    assertThat(strip.temperature()).isEmpty();
    ReadCurve.Answer answer = new ReadCurve().answer(strip.curveReadings());
    // 0.10 above the fog: ln(1 + e^u) = 0.10 / (0.60 x 0.12), u = 1.102, log H = -2.50 + 0.132;
    // 0.80 over its antilogarithm is EI 187 (ISO 6); by thirds and by the fit within 5 %
    double u = Math.log(Math.expm1(0.10 / (GRADIENT * TOE)));
    double speed = 0.80 / Math.pow(10, FOOT + TOE * u);
    assertThat(speed).isCloseTo(187, within(1.0));
    assertThat(answer.results().get(Measure.EXPOSURE_INDEX).value().orElseThrow() / speed)
        .isBetween(0.95, 1.05);
    assertThat(answer.results().get(Measure.CONTRAST_INDEX).value()).isPresent();
  }

  @Test
  void aPieceReadAgainTakesThePlaceOfItsCurve() {
    KeptTestRoll kept = developed(1);
    kept = rolls().type(kept.id(), readings(kept, 1));
    FilmStrip strip = new PieceReader(wetside.densitometry()).read(kept, 1, "").orElseThrow();
    long first = rolls().keepCurve(kept.id(), 1, strip).curveNumbers().get(0);
    KeptTestRoll read = rolls().keepCurve(kept.id(), 1, strip);
    assertThat(read.curveNumbers().get(0)).isGreaterThan(first);
    assertThat(read.isDone(TestStep.READ_1)).isTrue();
    assertThat(wetside.sensitometry().keepStrips().find(first)).isEmpty();
    assertThat(wetside.sensitometry().keepStrips().all()).hasSize(1);
  }

  @Test
  void everyBadReadingHasItsOwnMessage() {
    KeptTestRoll kept = rolls().begin(roll());
    PieceReader reader = new PieceReader(wetside.densitometry());
    assertThat(reader.read(kept, 1, "")).isEmpty();
    assertThat(reader.problems().get(PieceReader.WHOLE)).contains("how long piece 1");
    kept = developed(1);
    assertThat(reader.read(kept, 1, "")).isEmpty();
    assertThat(reader.problems().get(PieceReader.WHOLE)).contains("No density", "piece 1");
    kept =
        rolls()
            .type(
                kept.id(),
                List.of(
                    new TypedReading(2, "0,31", ""),
                    new TypedReading(3, "", "thin"),
                    new TypedReading(4, "0.40", "")));
    assertThat(reader.read(kept, 1, "")).isEmpty();
    assertThat(reader.problems()).containsOnlyKeys("2", "3");
    assertThat(reader.problems().get("2")).contains("\"0,31\"", "comma", "point");
    assertThat(reader.problems().get("3")).contains("\"thin\"", "number");
    List<TypedReading> falling = new ArrayList<>();
    for (PlannedFrame frame : kept.framesToRead(1)) {
      falling.add(new TypedReading(frame.frame(), String.valueOf(2 - 0.1 * frame.frame()), ""));
    }
    KeptTestRoll fallen = rolls().type(kept.id(), falling);
    assertThat(reader.read(fallen, 1, "")).isEmpty();
    assertThat(reader.problems().get(PieceReader.WHOLE)).contains("fall");
  }

  @Test
  void whatCannotBeIsRefused() {
    KeptTestRoll kept = rolls().begin(roll());
    long id = kept.id();
    assertThatThrownBy(() -> rolls().tick(id, TestStep.DEVELOP_1, ""))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("develop-1", "how long");
    assertThatThrownBy(() -> rolls().tick(id, TestStep.READ_3, ""))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("read-3", "readings");
    assertThatThrownBy(() -> rolls().tick(id, TestStep.CARD, "x".repeat(401)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("note", "401", "400");
    assertThatThrownBy(() -> rolls().tick(99, TestStep.CARD, ""))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("test roll", "99");
    rolls().tick(id, TestStep.EXPOSE, "");
    assertThatThrownBy(() -> rolls().replan(id, roll()))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("exposed");
    rolls().untick(id, TestStep.EXPOSE);
    assertThat(rolls().replan(id, roll()).roll()).isEqualTo(roll());
  }
}
