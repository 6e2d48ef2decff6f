package org.wetside.web.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.Bottle;

/**
 * Which labels are printed on what.
 *
 * @param bottles letters, parted by commas; all bottles on the shelf when nothing is said
 * @param paper {@code a4} or {@code letter}; a4 when nothing is said
 */
public record LabelWish(@Nullable String bottles, @Nullable String paper) {
  private static final Pattern LETTERS = Pattern.compile("[\\s,]+");

  /**
   * The labels.
   *
   * @param server where the pages are found, for the codes
   * @throws BadValueException when one of the bottles is not on the shelf, or none is
   */
  public LabelsView labels(Wetside wetside, String server) {
    List<Bottle> found = new ArrayList<>();
    if (bottles == null || bottles.isBlank()) {
      found.addAll(wetside.listBottles().all());
    } else {
      for (String letter : LETTERS.split(bottles.strip(), -1)) {
        found.add(
            wetside
                .listBottles()
                .find(letter)
                .orElseThrow(
                    () -> new BadValueException("bottle", letter, "no such bottle on the shelf")));
      }
    }
    if (found.isEmpty()) {
      throw new BadValueException("labels", "", "no bottle stands on the shelf");
    }
    return new LabelsView(found.stream().map(bottle -> LabelView.of(bottle, server)).toList());
  }

  /** The paper of a sheet. */
  public SheetWish.Paper format() {
    return new SheetWish(null, paper).format();
  }
}
