package org.wetside.web.plan;

import java.util.ArrayList;
import java.util.List;
import org.wetside.app.checks.BeforePour;
import org.wetside.app.checks.Check;
import org.wetside.app.checks.CheckGroup;
import org.wetside.app.checks.CheckState;

/**
 * What will be looked at before the first pour, as a load's page lists it.
 *
 * @param closing why the check of the closed tank is whole or short
 * @param groups what belongs together, in order
 */
public record LoadChecks(String closing, List<Group> groups) {

  /** Checks of one kind under their heading. */
  public record Group(String heading, List<Line> lines) {}

  /**
   * One check.
   *
   * @param flag the word before it; empty when there is nothing to warn of
   * @param solid whether the word is a warning and not only open
   * @param text what it is about, and what to do
   */
  public record Line(String flag, boolean solid, String text) {}

  static LoadChecks of(BeforePour before) {
    List<Group> groups = new ArrayList<>();
    for (CheckGroup group : CheckGroup.values()) {
      List<Line> lines =
          before.checks().stream()
              .filter(check -> check.group() == group)
              .filter(check -> !saidAbove(check))
              .map(LoadChecks::line)
              .toList();
      if (!lines.isEmpty()) {
        groups.add(new Group(heading(group), lines));
      }
    }
    return new LoadChecks(before.closing().because(), groups);
  }

  /** Baths that should not follow one another stand above, with the rinse. */
  private static boolean saidAbove(Check check) {
    return check.group() == CheckGroup.HANDLING && check.state() == CheckState.WARNING;
  }

  private static Line line(Check check) {
    boolean byHand = check.group() == CheckGroup.CLOSING;
    String flag =
        check.state() == CheckState.WARNING ? "Warning" : byHand || check.done() ? "" : "Open";
    return new Line(
        flag,
        check.state() == CheckState.WARNING,
        check.advice().isEmpty() ? check.text() : check.text() + ". " + check.advice());
  }

  private static String heading(CheckGroup group) {
    return switch (group) {
      case CLOSING -> "Closing the tank";
      case HANDLING -> "With care";
      case TEMPERATURES -> "Temperatures";
      case BOTTLES -> "Bottles";
      case STOCK -> "Stock";
      case PRECIOUS -> "Precious film";
    };
  }
}
