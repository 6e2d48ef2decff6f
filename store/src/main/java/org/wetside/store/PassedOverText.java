package org.wetside.store;

import java.util.List;
import java.util.stream.Collectors;
import org.wetside.core.run.PassedOver;

/** Checks that were passed over, as one column: a line for each, its id and then its words. */
final class PassedOverText {
  private PassedOverText() {}

  static String of(List<PassedOver> passed) {
    return passed.stream()
        .map(one -> one.id() + " " + one.text())
        .collect(Collectors.joining("\n"));
  }

  static List<PassedOver> read(String lines) {
    return lines.lines().map(PassedOverText::line).toList();
  }

  private static PassedOver line(String line) {
    String[] parts = line.split(" ", 2);
    return new PassedOver(parts[0], parts.length == 2 ? parts[1] : "");
  }
}
