package org.wetside.app.bench;

import java.util.List;

/**
 * One thing to feel or look at before the tank is closed for good (common practice).
 *
 * @param id stands in the record
 * @param text what is asked
 */
public record ClosingCheck(String id, String text) {
  /** In the order in which hands meet them. */
  public static final List<ClosingCheck> ALL =
      List.of(
          new ClosingCheck("reel-dry", "Reel dry and whole"),
          new ClosingCheck("leader-square", "Leader cut square"),
          new ClosingCheck("film-on-edges", "Film runs on the reel's edges, not across"),
          new ClosingCheck("centre-core", "Centre core in"),
          new ClosingCheck("lid-locked", "Lid locked"),
          new ClosingCheck("tug", "One tug at the lid: it holds"));

  static List<String> ids() {
    return ALL.stream().map(ClosingCheck::id).toList();
  }
}
