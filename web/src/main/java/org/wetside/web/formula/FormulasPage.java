package org.wetside.web.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.core.chemistry.Batch;
import org.wetside.web.page.Sheet;

/**
 * Model of the list of formulas.
 *
 * @param sheet the sheet
 * @param formulas all there are
 * @param batches the newest, those that are not finished among them
 */
public record FormulasPage(
    Sheet sheet, List<FormulasView.FormulaLineView> formulas, List<Batch> batches) {
  /** Keeps unmodifiable copies. */
  public FormulasPage {
    formulas = List.copyOf(formulas);
    batches = List.copyOf(batches);
  }

  /** Those of one's own. */
  public List<FormulasView.FormulaLineView> own() {
    return formulas.stream().filter(FormulasView.FormulaLineView::own).toList();
  }

  /** Those on file that can be mixed, by what they are for. */
  public Map<String, List<FormulasView.FormulaLineView>> mixable() {
    Map<String, List<FormulasView.FormulaLineView>> kinds = new LinkedHashMap<>();
    for (FormulasView.FormulaLineView one : formulas) {
      if (one.reason() == null && !one.own()) {
        String kind = one.kind().startsWith("film developer") ? "film developer" : one.kind();
        kinds.computeIfAbsent(kind, unused -> new ArrayList<>()).add(one);
      }
    }
    return kinds;
  }

  /** Those that are only shown. */
  public List<FormulasView.FormulaLineView> shown() {
    return formulas.stream().filter(one -> one.reason() != null).toList();
  }

  /** How many can be mixed. */
  public long count() {
    return formulas.stream().filter(one -> one.reason() == null).count();
  }

  /** Batches with something left to do. */
  public List<Batch> open() {
    return batches.stream().filter(batch -> !batch.isMixed()).toList();
  }

  /** The newest that are done. */
  public List<Batch> done() {
    return batches.stream().filter(Batch::isMixed).limit(10).toList();
  }

  /** Where one stands. */
  public static String address(String formula) {
    return FormulaAddress.of(formula);
  }
}
