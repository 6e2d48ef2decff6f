package org.wetside.web.page;

import org.wetside.web.api.Problem;

/**
 * Model of the page met when something went wrong.
 *
 * @param sheet the sheet
 * @param happened what happened, in one sentence
 * @param kept what was kept of what was done
 * @param next what to do now
 */
public record FailurePage(Sheet sheet, String happened, String kept, String next) {
  private static final int NOT_FOUND = 404;

  /** Says the problem in the three sentences a person needs. */
  public static FailurePage of(Sheet sheet, Problem problem, String method) {
    if (problem.status() == NOT_FOUND) {
      return new FailurePage(
          sheet, problem.detail(), "Nothing was changed.", "Start from the plan of the evening.");
    }
    boolean onlyRead = method.equals("GET") || method.equals("HEAD");
    String kept =
        onlyRead
            ? "Nothing was changed; everything kept before is still there."
            : "What was sent just now was not kept; everything kept before is still there.";
    String next =
        problem.exitCode() == 2
            ? "Go back: your browser still has what you typed. Change it and send it again."
            : "Go back and try again. If it happens twice, start the program again; a run goes on"
                + " by the clock meanwhile.";
    return new FailurePage(sheet, problem.detail(), kept, next);
  }
}
