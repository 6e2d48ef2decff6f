package org.wetside.core.testroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;

class RollPlanTest {
  private static final ThreeTimes TIMES = ThreeTimes.around(Duration.ofMinutes(8));

  @Test
  void oneApertureServesAllFramesWhereItCan() {
    // f/8 as metered: four stops under 1/60 is 1/1000, four over it 1/4
    assertThat(settings(plan("1/60@f8", CameraRange.USUAL)))
        .containsExactly(
            "1/1000 at f/8",
            "1/500 at f/8",
            "1/250 at f/8",
            "1/125 at f/8",
            "1/60 at f/8",
            "1/30 at f/8",
            "1/15 at f/8",
            "1/8 at f/8",
            "1/4 at f/8");
    // at f/8 four stops under 1/125 is 1/2000, faster than 1/1000; f/11 is the nearest that does
    assertThat(settings(plan("1/125@f8", CameraRange.USUAL)))
        .startsWith("1/1000 at f/11")
        .endsWith("1/4 at f/11");
  }

  @Test
  void theApertureHelpsOutWhereTheShutterEnds() {
    // six speeds for nine frames: three take another aperture, two of them at the fast end, since
    // 1/30 lies three from 1/250 and two from 1/8
    assertThat(settings(plan("1/30@f8", range("1/250", "1/8", "f/2.8", "f/16"))))
        .containsExactly(
            "1/250 at f/11",
            "1/250 at f/8",
            "1/125 at f/8",
            "1/60 at f/8",
            "1/30 at f/8",
            "1/15 at f/8",
            "1/8 at f/8",
            "1/8 at f/5.6",
            "1/8 at f/4");
  }

  @Test
  void thirdsOfTheMeterStayOnTheDials() {
    // f/7.1 is a third under f/8; f/10 a stop from f/7.1
    assertThat(settings(plan("1/125@f7.1", CameraRange.USUAL))).first().isEqualTo("1/1000 at f/10");
  }

  @Test
  void framesOfTheFirstPieceAndTheirLogExposures() {
    List<PlannedFrame> frames = plan("1/60@f8", CameraRange.USUAL).frames();
    assertThat(frames.get(0).kind()).isEqualTo(PlannedFrame.Kind.BLANK);
    assertThat(frames.get(0).exposure()).isEmpty();
    assertThat(frames.get(0).relativeLogH()).isEmpty();
    // frame 2: four stops under, 4 x 0.30103; frame 6 as metered; frame 10: four over
    assertThat(frames.get(1).relativeLogH()).hasValueCloseTo(-1.20412, within(1e-5));
    assertThat(frames.get(5).relativeLogH()).hasValueCloseTo(0.0, within(1e-12));
    assertThat(frames.get(9).relativeLogH()).hasValueCloseTo(1.20412, within(1e-5));
    assertThat(frames.get(10).kind()).isEqualTo(PlannedFrame.Kind.CUT);
    assertThat(frames.get(11).kind()).isEqualTo(PlannedFrame.Kind.CUT);
    assertThat(frames.get(12)).isEqualTo(new PlannedFrame(13, 2, PlannedFrame.Kind.BLANK, null));
  }

  @Test
  void theSeriesHoldsWhatIsReadFromTheCurve() {
    // the meter gives 8/S, the speed point is at 0.80/S: log H 1.00 apart
    double speedPoint = -1.00;
    List<FrameStep> series = plan("1/60@f8", CameraRange.USUAL).series();
    double least = series.get(0).relativeLogH();
    double most = series.get(series.size() - 1).relativeLogH();
    // -1.204 and +1.204; 0.68 stops under the speed point are left
    assertThat((speedPoint - least) / Math.log10(2)).isCloseTo(0.678, within(0.001));
    // triangle 1.30, average gradient 1.50, contrast index 0.58: 2.0 cos(atan 0.58) = 1.730
    assertThat(speedPoint + 1.30).isLessThan(most);
    assertThat(speedPoint + 1.50).isLessThan(most);
    assertThat(speedPoint + 2.0 * Math.cos(Math.atan(0.58)))
        .isCloseTo(0.730, within(0.001))
        // and for a film a stop and a half slower than its box says
        .isLessThan(most - 1.5 * Math.log10(2));
  }

  @Test
  void tooMuchLightIsRefusedWithHowMuchLess() {
    // 1/1000 at f/16 is the least; four stops under it are asked for
    assertThatThrownBy(() -> plan("1/1000@f16", CameraRange.USUAL))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll(
            "metered exposure", "1/1000 at f/16", "-4 stops", "4 stops less light");
  }

  @Test
  void tooLittleLightIsRefusedWithHowMuchMore() {
    // 1/4 at f/2 is one stop under the most, 1/2 at f/2; four over it are asked for
    assertThatThrownBy(() -> plan("1/4@f2", CameraRange.USUAL))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll(
            "metered exposure", "1/4 at f/2", "+4 stops", "1/2 at f/2", "3 stops more light");
  }

  @Test
  void aCameraThatSpansTooFewStopsIsRefused() {
    // 1/30 to 1/250 is three stops, f/4 to f/8 two
    assertThatThrownBy(() -> plan("1/60@f8", range("1/250", "1/30", "f/4", "f/8")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("camera range", "spans 5 stops", "needs 8");
  }

  @Test
  void aDialWithNoMarkWholeStopsAwayIsRefused() {
    assertThatThrownBy(() -> plan("1/60@f7.1", range("1/1000", "1/2", "f/8", "f/8")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("camera range", "f/8", "1/60 at f/7.1");
  }

  @Test
  void anyMeterAndCameraGiveAWholeRollOrARefusal() {
    Random random = new Random(183);
    int planned = 0;
    for (int i = 0; i < 20_000; i++) {
      CameraRange range = anyRange(random);
      CameraExposure metered =
          new CameraExposure(new Shutter(random.nextInt(40)), new Aperture(random.nextInt(37)));
      try {
        holds(new RollPlan(metered, range, TIMES));
        planned++;
      } catch (BadValueException refused) {
        assertThat(refused.thing()).isIn("metered exposure", "camera range");
        assertThat(refused.getMessage())
            .contains(
                refused.thing().equals("camera range") ? range.toString() : metered.toString())
            .containsPattern(
                "needs 8|whole stops from the metered|\\d stops? (more|less) light is needed");
      }
    }
    // enough of both, so that neither side is tested by nothing
    assertThat(planned).isBetween(1_000, 19_000);
  }

  private static void holds(RollPlan plan) {
    List<PlannedFrame> frames = plan.frames();
    assertThat(frames).hasSize(36);
    List<List<FrameStep>> pieces = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (int i = 0; i < frames.size(); i++) {
      PlannedFrame frame = frames.get(i);
      assertThat(frame.frame()).isEqualTo(i + 1);
      assertThat(frame.piece()).isEqualTo(i / 12 + 1);
      if (frame.step() != null) {
        pieces.get(frame.piece() - 1).add(frame.step());
      }
    }
    assertThat(pieces.get(1)).isEqualTo(pieces.get(0));
    assertThat(pieces.get(2)).isEqualTo(pieces.get(0));
    int stops = RollPlan.LEAST;
    for (FrameStep step : pieces.get(0)) {
      assertThat(step.stops().count()).isEqualTo(stops);
      assertThat(step.exposure().stopsMoreThan(plan.metered()).count()).isEqualTo(stops);
      assertThat(plan.range().holds(step.exposure())).as("%s", plan).isTrue();
      stops++;
    }
    assertThat(stops).isEqualTo(RollPlan.MOST + 1);
  }

  private static CameraRange anyRange(Random random) {
    int slowest = 3 + random.nextInt(20);
    int widest = random.nextInt(20);
    return new CameraRange(
        new Shutter(Math.min(39, slowest + random.nextInt(30))),
        new Shutter(slowest),
        new Aperture(widest),
        new Aperture(Math.min(36, widest + random.nextInt(25))));
  }

  private static RollPlan plan(String metered, CameraRange range) {
    return new RollPlan(CameraExposure.parse("metered exposure", metered), range, TIMES);
  }

  private static CameraRange range(String fast, String slow, String wide, String small) {
    return new CameraRange(
        Shutter.parse(fast), Shutter.parse(slow), Aperture.parse(wide), Aperture.parse(small));
  }

  private static List<String> settings(RollPlan plan) {
    return plan.series().stream().map(step -> step.exposure().toString()).toList();
  }
}
