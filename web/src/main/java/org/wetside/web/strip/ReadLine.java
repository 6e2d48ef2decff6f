package org.wetside.web.strip;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetside.app.curves.ReadCurve;
import org.wetside.core.sensitometry.MovedStep;
import org.wetside.core.sensitometry.Outlier;
import org.wetside.core.sensitometry.StepReading;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.StepScale;
import org.wetside.core.strip.StripReading;

/**
 * One step of a strip as it was read.
 *
 * @param place step or stops; empty when places are log exposures
 * @param logH log exposure
 * @param read every density read there
 * @param mean of them
 * @param remark moved, off the smooth curve, or nothing
 */
public record ReadLine(String place, String logH, String read, String mean, String remark) {
  private static final double SAME = 1e-9;

  static List<ReadLine> of(FilmStrip strip, ReadCurve.Answer answer) {
    Map<Double, List<StripReading>> byLogH = new LinkedHashMap<>();
    for (StripReading one : strip.readings()) {
      byLogH
          .computeIfAbsent(
              strip.scale().at(one.place()).log10LuxSeconds(), place -> new ArrayList<>())
          .add(one);
    }
    List<ReadLine> lines = new ArrayList<>();
    for (StepReading step : answer.curve().steps()) {
      double logH = step.logExposure().log10LuxSeconds();
      List<StripReading> readings = byLogH.getOrDefault(logH, List.of());
      lines.add(
          new ReadLine(
              place(strip, readings),
              Digits.two(logH),
              readings.stream()
                  .map(one -> Digits.two(one.density().value()))
                  .collect(Collectors.joining(", ")),
              Digits.two(step.density().value()),
              remark(answer, logH)));
    }
    return lines;
  }

  private static String place(FilmStrip strip, List<StripReading> readings) {
    return strip.scale() instanceof StepScale.LogExposures || readings.isEmpty()
        ? ""
        : StripText.place(readings.get(0).place());
  }

  private static String remark(ReadCurve.Answer answer, double logH) {
    List<String> remarks = new ArrayList<>();
    for (MovedStep moved : answer.curve().moved()) {
      if (Math.abs(moved.log10LuxSeconds() - logH) < SAME) {
        remarks.add("densities fell: taken as " + Digits.two(moved.taken()));
      }
    }
    for (Outlier outlier : answer.curve().outliers()) {
      if (Math.abs(outlier.log10LuxSeconds() - logH) < SAME) {
        remarks.add(
            "off by " + Digits.two(outlier.read() - outlier.expected()) + ": read it again");
      }
    }
    return String.join("; ", remarks);
  }
}
