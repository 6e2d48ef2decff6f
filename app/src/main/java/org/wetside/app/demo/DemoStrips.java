package org.wetside.app.demo;

import java.time.LocalDate;
import java.util.Locale;
import java.util.SplittableRandom;
import org.wetside.app.Wetside;
import org.wetside.app.curves.StripDraft;
import org.wetside.app.curves.StripReader;
import org.wetside.core.quantity.Units;

/**
 * Three strips of an invented film at three times: a smooth curve with a shoulder, read with
 * scatter, one step of the second misread.
 */
final class DemoStrips {
  private static final String[] TIMES = {"7:00", "9:30", "13:00"};
  private static final double[] GAMMAS = {0.54, 0.64, 0.75};
  private static final int STEPS = 21;
  private static final int MISREAD_STEP = 13;

  private final Wetside wetside;
  private final LocalDate day;

  DemoStrips(Wetside wetside, LocalDate today) {
    this.wetside = wetside;
    day = today.minusDays(11);
  }

  void put() {
    SplittableRandom scatter = new SplittableRandom(11);
    for (int strip = 0; strip < TIMES.length; strip++) {
      StripDraft draft =
          new StripDraft(
              "Sluice Pan 125",
              "D-76",
              "1+1",
              TIMES[strip],
              "20C",
              "small",
              day.toString(),
              "calibrated",
              "logH",
              readings(GAMMAS[strip], strip == 1, scatter),
              "",
              "",
              "",
              "0.24",
              "step tablet no. 2, read twice");
      wetside
          .sensitometry()
          .keepStrips()
          .keep(new StripReader(Units.METRIC).read(draft).orElseThrow());
    }
  }

  private static String readings(double gamma, boolean misread, SplittableRandom scatter) {
    StringBuilder lines = new StringBuilder();
    for (int step = 1; step <= STEPS; step++) {
      double logH = -3.10 + 0.15 * (step - 1);
      for (int time = 0; time < 2; time++) {
        double off = (misread && step == MISREAD_STEP ? 0.05 : 0) + scatter.nextDouble(-0.01, 0.01);
        lines.append(String.format(Locale.ROOT, "%.2f,%.2f\n", logH, density(gamma, logH) + off));
      }
    }
    return lines.toString();
  }

  private static double density(double gamma, double logH) {
    return 0.24 + gamma * (0.12 * soft((logH + 2.2) / 0.12) - 0.25 * soft((logH + 0.1) / 0.25));
  }

  private static double soft(double value) {
    return Math.log1p(Math.exp(value));
  }
}
