package org.wetside.web.testroll;

import java.util.stream.Collectors;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;

/**
 * What stands above the plan.
 *
 * @param title film and developer
 * @param recipe index, meter, temperature and times
 * @param logHWord what the log exposures are counted from
 */
public record TestRollHead(String title, String recipe, String logHWord) {
  static TestRollHead of(TestRollView view) {
    return of(view, Units.METRIC);
  }

  static TestRollHead of(TestRollView view, Units units) {
    String film = view.film() == null ? "one film" : view.film();
    Double index = view.exposureIndex();
    Double celsius = view.temperatureC();
    String times =
        view.pieces().stream()
            .map(TestRollView.TestPieceView::develop)
            .collect(Collectors.joining(", "));
    return new TestRollHead(
        film + (view.developer() == null ? "" : " in " + view.developer()),
        "Card metered "
            + view.metered()
            + (index == null ? "" : " at index " + plain(index))
            + ". Three pieces of twelve frames, developed "
            + times
            + (celsius == null ? "" : " at " + units.words(Temperature.ofCelsius(celsius)))
            + ". Camera "
            + view.camera()
            + ".",
        index == null ? "log H relative" : "log H (lux s)");
  }

  private static String plain(double value) {
    String text = String.valueOf(value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
