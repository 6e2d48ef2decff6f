package org.wetside.web.waste;

import java.util.List;
import org.wetside.app.waste.KeepJugs;
import org.wetside.core.waste.FilledJug;

/**
 * The book of waste.
 *
 * @param rule whose rules come first
 * @param jugs by name; only that one where one was asked for
 */
public record WasteView(String rule, List<JugView> jugs) {
  /** Stands wherever waste is spoken of (CH-S18, CH-S19). */
  public static final String RULE =
      "Follow your local waste authority: its rules come before everything said here.";

  /** Every jug. */
  public static WasteView of(KeepJugs jugs) {
    return new WasteView(RULE, jugs.all().stream().map(one -> JugView.of(one, jugs)).toList());
  }

  /** One jug. */
  public static WasteView one(FilledJug jug, KeepJugs jugs) {
    return new WasteView(RULE, List.of(JugView.of(jug, jugs)));
  }
}
