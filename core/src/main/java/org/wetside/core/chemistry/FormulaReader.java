package org.wetside.core.chemistry;

import java.util.Map;
import java.util.TreeMap;
import org.wetside.core.quantity.BadValueException;

/** Reads one chemical formula from left to right: parts joined by dots, groups in brackets. */
final class FormulaReader {
  private static final int MOST_ATOMS = 10_000;

  private final String formula;
  private int at;

  FormulaReader(String formula) {
    this.formula = formula.strip();
  }

  Map<String, Integer> read() {
    Map<String, Integer> all = new TreeMap<>();
    do {
      int times = number();
      add(all, group(0), times);
    } while (take('.') || take('·'));
    if (at < formula.length() || all.isEmpty()) {
      throw wrong();
    }
    return all;
  }

  private Map<String, Integer> group(int depth) {
    Map<String, Integer> atoms = new TreeMap<>();
    while (at < formula.length()) {
      char next = formula.charAt(at);
      if (next == '(') {
        at++;
        Map<String, Integer> inner = group(depth + 1);
        if (!take(')')) {
          throw wrong();
        }
        add(atoms, inner, number());
      } else if (next >= 'A' && next <= 'Z') {
        add(atoms, Map.of(symbol(), 1), number());
      } else {
        break;
      }
    }
    if (atoms.isEmpty()) {
      throw wrong();
    }
    return atoms;
  }

  private String symbol() {
    int from = at++;
    while (at < formula.length() && formula.charAt(at) >= 'a' && formula.charAt(at) <= 'z') {
      at++;
    }
    return formula.substring(from, at);
  }

  /** The number that stands here; 1 when none does. */
  private int number() {
    int from = at;
    while (at < formula.length() && formula.charAt(at) >= '0' && formula.charAt(at) <= '9') {
      at++;
    }
    if (from == at) {
      return 1;
    }
    if (at - from > 4 || formula.charAt(from) == '0') {
      throw wrong();
    }
    return Integer.parseInt(formula.substring(from, at));
  }

  private boolean take(char wanted) {
    if (at < formula.length() && formula.charAt(at) == wanted) {
      at++;
      return true;
    }
    return false;
  }

  private void add(Map<String, Integer> all, Map<String, Integer> more, int times) {
    for (Map.Entry<String, Integer> one : more.entrySet()) {
      long sum = all.getOrDefault(one.getKey(), 0) + (long) one.getValue() * times;
      if (sum > MOST_ATOMS) {
        throw wrong();
      }
      all.put(one.getKey(), (int) sum);
    }
  }

  private BadValueException wrong() {
    return new BadValueException(
        "chemical formula",
        formula,
        "write it as Na2SO3.7H2O: symbols with their numbers, water after a dot, at most "
            + MOST_ATOMS
            + " atoms of one kind");
  }
}
