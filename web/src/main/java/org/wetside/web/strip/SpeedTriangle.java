package org.wetside.web.strip;

import java.util.OptionalDouble;
import org.wetside.app.curves.ReadCurve;
import org.wetside.core.sensitometry.CharacteristicCurve;
import org.wetside.core.sensitometry.Interval;
import org.wetside.core.sensitometry.Measure;

/**
 * What is read off a curve, as it is drawn: base plus fog, the speed point 0.10 above it, the
 * triangle over 1.30 of log exposure and the chord over 1.50. A path is empty where the curve does
 * not reach.
 *
 * @param fog line of base plus fog
 * @param fogLabel what it says
 * @param fogY where
 * @param speed whether there is a speed point
 * @param speedX where it lies
 * @param speedY likewise
 * @param speedLabel what it says
 * @param drop line down from the speed point
 * @param band the 90 % band of the speed point, lying
 * @param triangle of the contrast condition
 * @param rise line and label of its height
 * @param riseLabel density over 1.30
 * @param riseX where that stands
 * @param riseY likewise
 * @param chord of the average gradient
 * @param description all of it in words
 */
public record SpeedTriangle(
    String fog,
    String fogLabel,
    double fogY,
    boolean speed,
    double speedX,
    double speedY,
    String speedLabel,
    String drop,
    String band,
    String triangle,
    String rise,
    String riseLabel,
    double riseX,
    double riseY,
    String chord,
    String description) {
  /** ISO 6 (SE-S01, S02), and the chord of the average gradient (SE-S52). */
  private static final double SPEED_DENSITY = 0.10;

  private static final double CONDITION = 1.30;
  private static final double CHORD = 1.50;
  private static final double BESIDE = 26;

  static SpeedTriangle of(ReadCurve.Answer answer, Plot plot) {
    CharacteristicCurve curve = answer.curve();
    double fog = curve.baseFog().density().value();
    OptionalDouble point = answer.results().get(Measure.LOG_HM).value();
    double fogY = plot.y(fog);
    String fogPath = "M" + plot.left() + " " + fogY + "H" + plot.right();
    String fogLabel = "base + fog " + Digits.two(fog);
    if (point.isEmpty()) {
      return new SpeedTriangle(
          fogPath,
          fogLabel,
          fogY,
          false,
          0,
          0,
          "",
          "",
          "",
          "",
          "",
          "",
          0,
          0,
          "",
          fogLabel + ". No reading reaches 0.10 above it: there is no speed point.");
    }
    double at = point.getAsDouble();
    double density = fog + SPEED_DENSITY;
    double x = plot.x(at);
    double y = plot.y(density);
    String words = fogLabel + ". Speed point at log exposure " + Digits.two(at) + ".";
    String triangle = "";
    String rise = "";
    String riseLabel = "";
    double riseX = 0;
    double riseY = 0;
    OptionalDouble top = curve.densityAt(at + CONDITION);
    if (top.isPresent()) {
      double corner = plot.x(at + CONDITION);
      double topY = plot.y(top.getAsDouble());
      triangle = "M" + x + " " + y + "H" + corner + "V" + topY + "Z";
      riseX = corner + BESIDE;
      rise =
          "M"
              + riseX
              + " "
              + y
              + "V"
              + topY
              + "M"
              + (riseX - 6)
              + " "
              + y
              + "h12M"
              + (riseX - 6)
              + " "
              + topY
              + "h12";
      riseLabel = Digits.three(top.getAsDouble() - density);
      riseY = (y + topY) / 2 + 6;
      words += " Over 1.30 of log exposure the density rises by " + riseLabel + ".";
    } else {
      words += " The readings end before 1.30 beyond it.";
    }
    OptionalDouble far = curve.densityAt(at + CHORD);
    String chord =
        far.isPresent() ? "M" + x + " " + y + "L" + plot.point(at + CHORD, far.getAsDouble()) : "";
    if (far.isPresent()) {
      words += " A dotted chord shows the average gradient over 1.50.";
    }
    return new SpeedTriangle(
        fogPath,
        fogLabel,
        fogY,
        true,
        x,
        y,
        "speed point " + Digits.two(at),
        "M" + x + " " + y + "V" + plot.bottom(),
        answer.results().get(Measure.LOG_HM).band().map(band -> lying(band, plot, y)).orElse(""),
        triangle,
        rise,
        riseLabel,
        riseX,
        riseY,
        chord,
        words);
  }

  private static String lying(Interval band, Plot plot, double y) {
    double low = plot.x(band.low());
    double high = plot.x(band.high());
    return "M" + low + " " + y + "H" + high + "M" + low + " " + (y - 7) + "v14M" + high + " "
        + (y - 7) + "v14";
  }
}
