package org.wetside.web.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.trial.TrialKind;
import org.wetside.core.trial.TrialStep;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;
import org.wetside.reference.TestGuides;
import org.wetside.web.mixing.CautionView;

/**
 * How a test is made.
 *
 * @param kind clearing, leader, iodide or residue
 * @param title how it is headed
 * @param steps in order
 */
public record GuideView(String kind, String title, List<GuideStepView> steps) {
  /** The guide of a test, with the cautions for what is in the bottle. */
  static GuideView of(TrialKind kind, Optional<Bottle> bottle) {
    Cautions cautions = Cautions.open();
    List<GuideStepView> steps = new ArrayList<>();
    Set<Caution> said = new LinkedHashSet<>();
    for (TrialStep step : TestGuides.open().of(kind).steps()) {
      List<CautionView> shown = new ArrayList<>();
      for (Caution caution : at(step, bottle, cautions)) {
        // said once, where it is first handled
        if (said.add(caution)) {
          shown.add(CautionView.of(caution));
        }
      }
      steps.add(GuideStepView.of(step, shown));
    }
    return new GuideView(kind.word(), kind.title(), steps);
  }

  /** The steps of one moment. */
  public List<GuideStepView> at(String moment) {
    return steps.stream().filter(step -> step.moment().equals(moment)).toList();
  }

  private static List<Caution> at(TrialStep step, Optional<Bottle> bottle, Cautions cautions) {
    List<Caution> found = new ArrayList<>();
    for (String handled : step.handles()) {
      if (!handled.equals(TrialStep.CONTENTS)) {
        found.addAll(cautions.of(List.of(handled)));
      } else if (bottle.isPresent()) {
        found.addAll(
            cautions.whenHandling(bottle.get().label().contents(), bottle.get().label().bath()));
      }
    }
    return found;
  }
}
