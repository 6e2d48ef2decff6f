package org.wetside.web.formula;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Where the pages of a formula are. */
final class FormulaAddress {
  static final String ALL = "/shelf/formulas";
  static final String BATCHES = ALL + "/batches";

  private FormulaAddress() {}

  static String of(String formula) {
    return ALL + "/" + URLEncoder.encode(formula, StandardCharsets.UTF_8).replace("+", "%20");
  }
}
