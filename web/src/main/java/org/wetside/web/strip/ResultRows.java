package org.wetside.web.strip;

import java.util.ArrayList;
import java.util.List;
import org.wetside.app.curves.ReadCurve;
import org.wetside.core.sensitometry.ContrastCondition;
import org.wetside.core.sensitometry.CurveResult;
import org.wetside.core.sensitometry.CurveResults;
import org.wetside.core.sensitometry.Measure;
import org.wetside.core.sensitometry.SpeedStep;
import org.wetside.core.source.Standing;
import org.wetside.core.strip.StepLight;
import org.wetside.web.curves.CurveView;

/** The table of results of one strip: value, band, standing and source of each. */
final class ResultRows {
  static final String NOT_DETERMINABLE = "not determinable";

  private ResultRows() {}

  static List<ResultRow> of(StepLight light, ReadCurve.Answer answer) {
    CurveResults results = answer.results();
    List<ResultRow> rows = new ArrayList<>();
    rows.add(row(results, Measure.LOG_HM, light));
    rows.add(row(results, Measure.DELTA_D, light));
    rows.add(condition(results.condition()));
    rows.add(iso(results, light));
    for (Measure measure :
        List.of(
            Measure.EXPOSURE_INDEX,
            Measure.SPEED_DELTA_X,
            Measure.DELTA_X,
            Measure.AVERAGE_GRADIENT,
            Measure.CONTRAST_INDEX,
            Measure.GAMMA)) {
      rows.add(row(results, measure, light));
    }
    return rows;
  }

  private static ResultRow row(CurveResults results, Measure measure, StepLight light) {
    CurveResult result = results.get(measure);
    boolean speed = CurveView.isSpeed(measure);
    if (speed && !light.givesSpeed()) {
      return new ResultRow(
          measure.words(),
          NOT_DETERMINABLE,
          "relative exposures give no speed",
          standing(measure),
          source(measure));
    }
    String value =
        result.value().isEmpty()
            ? NOT_DETERMINABLE
            : speed
                ? Digits.speed(result.value().getAsDouble())
                : measure == Measure.DELTA_D
                    ? Digits.three(result.value().getAsDouble())
                    : Digits.two(result.value().getAsDouble());
    String band = speed ? Digits.speedBand(result.band()) : Digits.twoBand(result.band());
    return new ResultRow(
        measure.words(),
        value,
        band.isEmpty() ? result.remark() : band,
        standing(measure),
        source(measure));
  }

  private static ResultRow condition(ContrastCondition condition) {
    return new ResultRow(
        "contrast of ISO 6, "
            + Digits.two(ContrastCondition.LIMITS.low())
            + " to "
            + Digits.two(ContrastCondition.LIMITS.high())
            + " over 1.30",
        condition.word(),
        "",
        Standing.FROM_MEMORY,
        "ISO 6 (SE-S01); the limits are recalled");
  }

  private static ResultRow iso(CurveResults results, StepLight light) {
    String why =
        light != StepLight.CALIBRATED
            ? "only for a calibrated light"
            : results.condition().isMet() ? "" : "only when the contrast is that of ISO 6";
    String band =
        results.isoBand().isEmpty()
            ? why
            : written(results.isoBand().get(0)) + " to " + written(results.isoBand().get(1));
    return new ResultRow(
        "ISO speed",
        results.isoSpeed().map(ResultRows::written).orElse(NOT_DETERMINABLE),
        band,
        Standing.FROM_MEMORY,
        "0.80/Hm, recalled, agrees with SE-S40");
  }

  /** {@code 100/21°}. */
  static String written(SpeedStep step) {
    return Digits.speed(step.iso()) + "/" + step.degrees() + "°";
  }

  private static Standing standing(Measure measure) {
    return switch (measure) {
      case LOG_HM, DELTA_D -> Standing.MEASURED;
      case AVERAGE_GRADIENT, CONTRAST_INDEX, GAMMA -> Standing.COMPUTED;
      case DELTA_X, EXPOSURE_INDEX, SPEED_DELTA_X -> Standing.FROM_MEMORY;
    };
  }

  private static String source(Measure measure) {
    return switch (measure) {
      case LOG_HM -> "0.10 above base plus fog, ISO 6 (SE-S01, S02)";
      case DELTA_D -> "ISO 6 (SE-S01, S02)";
      case DELTA_X -> "SE-S04, S05; the quadratic is recalled, ±0.06";
      case EXPOSURE_INDEX -> "0.80/Hm, recalled, agrees with SE-S40; not ISO";
      case SPEED_DELTA_X -> "SE-S04, S05; the quadratic is recalled";
      case AVERAGE_GRADIENT -> "chord over 1.50 from the speed point (SE-S52)";
      case CONTRAST_INDEX -> "ray met at 0.2 and 2.2 (SE-S07, S51, S52)";
      case GAMMA -> "longest straight part (SE-S07)";
    };
  }
}
