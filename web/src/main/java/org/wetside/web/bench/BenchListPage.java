package org.wetside.web.bench;

import java.util.List;
import org.wetside.web.page.Sheet;

/**
 * Model of the Bench's first page: which runs go on, which loads may start.
 *
 * @param sheet the sheet
 * @param going runs that have been opened and are not over, the one that ends first in front
 * @param ready loads that wait for their first pour
 * @param over the last runs that are over
 * @param tests tests that run, then bottles that can be tested
 */
public record BenchListPage(
    Sheet sheet,
    List<RunLine> going,
    List<LoadLine> ready,
    List<RunLine> over,
    List<TestLine> tests) {

  /** Keeps unmodifiable copies. */
  public BenchListPage {
    going = List.copyOf(going);
    ready = List.copyOf(ready);
    over = List.copyOf(over);
    tests = List.copyOf(tests);
  }

  /**
   * One run.
   *
   * @param run its id
   * @param tank its tank
   * @param rolls the numbers of its rolls
   * @param state where it stands, in words: {@code "Developer"}, {@code "nothing poured yet"}
   * @param time the clock time that matters: when it ends, or ended
   * @param timeWord what that time is: {@code "hangs"}, {@code "hung"}
   */
  public record RunLine(
      long run, String tank, String rolls, String state, String time, String timeWord) {}

  /**
   * A bath that can be tested here, or whose test runs.
   *
   * @param path where
   * @param what in words: {@code bottle F, rapid fixer}
   * @param runs whether its test runs
   */
  public record TestLine(String path, String what, boolean runs) {}

  /**
   * One load that may start.
   *
   * @param load its id
   * @param tank its tank
   * @param rolls the numbers of its rolls
   * @param how film, developer, time in one line
   */
  public record LoadLine(long load, String tank, String rolls, String how) {}
}
