package org.wetside.web.density;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.app.density.PatchLines;
import org.wetside.core.instrument.PatchRectangle;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.page.FilledForm;

/**
 * Patches as rows of a form: {@code label0}, {@code x0}, {@code y0}, {@code width0}, {@code
 * height0} and so on. An empty row is none.
 *
 * @param form as it was typed
 */
public record PatchRows(FilledForm form) {
  /** Names of the cells of a row. */
  public static final List<String> CELLS = List.of("label", "x", "y", "width", "height");

  private static final int MOST = 200;

  /** With these patches in it, and what else stood in the form. */
  static PatchRows of(List<PatchRectangle> patches, FilledForm others) {
    Map<String, String> values = new LinkedHashMap<>(others.values());
    values.keySet().removeIf(name -> name.matches("(label|x|y|width|height)\\d+"));
    int row = 0;
    for (PatchRectangle one : patches) {
      values.put("label" + row, one.label());
      values.put("x" + row, String.valueOf(one.x()));
      values.put("y" + row, String.valueOf(one.y()));
      values.put("width" + row, String.valueOf(one.width()));
      values.put("height" + row, String.valueOf(one.height()));
      row++;
    }
    return new PatchRows(FilledForm.of(values));
  }

  /** Numbers of the rows to draw: all that have something in them, and one more. */
  public List<Integer> rows() {
    List<Integer> rows = new ArrayList<>();
    int next = 0;
    for (int row = 0; row < MOST; row++) {
      if (isFilled(row)) {
        rows.add(row);
        next = row + 1;
      }
    }
    if (next < MOST) {
      rows.add(next);
    }
    return rows;
  }

  /** Whether anything was typed into a row. */
  public boolean isFilled(int row) {
    return CELLS.stream().anyMatch(cell -> !form.isBlank(cell + row));
  }

  /** What stands in a cell. */
  public String value(String cell, int row) {
    return form.value(cell + row);
  }

  /** The patches that can be drawn: what is wrong is left out. */
  public List<PatchRectangle> drawable() {
    List<PatchRectangle> patches = new ArrayList<>();
    for (int row : rows()) {
      if (isFilled(row)) {
        try {
          patches.add(patch(row));
        } catch (BadValueException wrong) {
          // said beside its row when the form is sent
        }
      }
    }
    return patches;
  }

  /**
   * The patches, or the same form with what is wrong.
   *
   * @param read gets the patches when every row is right
   */
  PatchRows checked(List<PatchRectangle> read) {
    FilledForm said = form;
    for (int row : rows()) {
      if (isFilled(row)) {
        try {
          read.add(patch(row));
        } catch (BadValueException wrong) {
          said = said.saying("label" + row, wrong);
        }
      }
    }
    if (!said.isRefused()) {
      try {
        PatchLines.checked(read);
      } catch (BadValueException wrong) {
        said = said.saying(FilledForm.WHOLE, wrong);
      }
    }
    return new PatchRows(said);
  }

  private PatchRectangle patch(int row) {
    return PatchLines.patch(
        CELLS.stream().map(cell -> form.value(cell + row)).toArray(String[]::new));
  }
}
