package org.wetside.web.strip;

import org.wetside.app.curves.ReadCurve;
import org.wetside.core.sensitometry.CurveResult;
import org.wetside.core.sensitometry.CurveResults;
import org.wetside.core.sensitometry.Measure;
import org.wetside.core.sensitometry.SpeedStep;
import org.wetside.core.strip.FilmStrip;

/**
 * The answer of one strip in words: what a sentence is made of.
 *
 * @param speed {@code ISO 100/21°} or {@code EI 92}; empty when no speed can be read
 * @param speedBand of 90 %; empty without one
 * @param contrastName contrast index, or average gradient where that is not determinable; empty
 *     when neither is
 * @param contrast its value; likewise
 * @param contrastBand of 90 %; empty without one
 * @param condition whether the contrast is that of ISO 6, in a word
 */
public record StripAnswer(
    String speed,
    String speedBand,
    String contrastName,
    String contrast,
    String contrastBand,
    String condition) {

  static StripAnswer of(FilmStrip strip, ReadCurve.Answer answer) {
    CurveResults results = answer.results();
    CurveResult index = results.get(Measure.EXPOSURE_INDEX);
    String speed = "";
    String speedBand = "";
    if (results.isoSpeed().isPresent()) {
      speed = "ISO " + ResultRows.written(results.isoSpeed().get());
      speedBand =
          results.isoBand().isEmpty()
              ? ""
              : span(results.isoBand().get(0), results.isoBand().get(1));
    } else if (strip.light().givesSpeed() && index.value().isPresent()) {
      speed = "EI " + Digits.speed(index.value().getAsDouble());
      speedBand = Digits.speedBand(index.band());
    }
    CurveResult contrast = results.get(Measure.CONTRAST_INDEX);
    if (contrast.value().isEmpty()) {
      contrast = results.get(Measure.AVERAGE_GRADIENT);
    }
    boolean known = contrast.value().isPresent();
    return new StripAnswer(
        speed,
        speedBand,
        known ? contrast.measure().words() : "",
        known ? Digits.two(contrast.value().getAsDouble()) : "",
        known ? Digits.twoBand(contrast.band()) : "",
        results.condition().word());
  }

  private static String span(SpeedStep slow, SpeedStep fast) {
    return slow.equals(fast)
        ? "the whole band rounds to it"
        : ResultRows.written(slow) + " to " + ResultRows.written(fast);
  }
}
