package org.wetside.cli;

import java.io.PrintWriter;
import java.util.List;
import org.wetside.web.process.OrderWarningView;

/** Baths that should not follow one another, and the command that puts a rinse between them. */
final class OrderWarnings {
  private OrderWarnings() {}

  static void print(
      List<OrderWarningView> warnings, String indent, String command, PrintWriter out) {
    for (OrderWarningView warning : warnings) {
      out.println(indent + "Warning, step " + warning.step() + ": " + warning.text());
      if (warning.rinse()) {
        out.println(indent + "  add a rinse: " + command + " --before " + warning.step());
      }
    }
  }
}
