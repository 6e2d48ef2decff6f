package org.wetside.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wetside.core.shelf.BottleLabel;

/** The rows of a file that speak of a bottle: those that name what is in it before the others. */
final class BottleRows {
  private BottleRows() {}

  static List<ReferenceRow> of(List<ReferenceRow> rows, BottleLabel label) {
    List<ReferenceRow> named = new ArrayList<>();
    List<ReferenceRow> any = new ArrayList<>();
    for (ReferenceRow row : rows) {
      if (!row.text("baths").isEmpty()
          && row.isFor(label.bath())
          && parts(row, "roles").contains(label.role().word())) {
        if (row.text("names").isEmpty()) {
          any.add(row);
        } else if (names(row, label)) {
          named.add(row);
        }
      }
    }
    named.addAll(any);
    return named;
  }

  private static boolean names(ReferenceRow row, BottleLabel label) {
    String contents = label.contents().toLowerCase(Locale.ROOT);
    return parts(row, "names").stream().anyMatch(contents::contains);
  }

  private static List<String> parts(ReferenceRow row, String column) {
    return List.of(row.text(column).split("\\|", -1));
  }
}
