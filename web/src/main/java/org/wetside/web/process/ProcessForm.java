package org.wetside.web.process;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.app.process.ProcessDraft;
import org.wetside.app.process.ProcessFault;
import org.wetside.app.process.StepDraft;
import org.wetside.app.process.StepField;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.Units;
import org.wetside.web.page.FilledForm;

/**
 * The form of a process: its name, and one group of fields for each step, {@code step-0-kind},
 * {@code step-0-bottle} … Nothing is read here, so nothing typed can be lost.
 *
 * @param form as typed
 */
record ProcessForm(FilledForm form) {
  private static final String FROM_THE_LOAD = "from the load";

  /** More than any process has; the rest of what comes in is not looked at. */
  private static final int MOST = 60;

  /** A process, opened to be changed by somebody who reads these units. */
  static ProcessForm of(FilmProcess process, Units units) {
    Map<String, String> values = new LinkedHashMap<>(of(ProcessDraft.of(process)).form().values());
    boolean exact = units.scale() == Units.Scale.CELSIUS;
    for (int i = 0; i < process.steps().size(); i++) {
      Step step = process.steps().get(i);
      if (step.duration().isEmpty()) {
        values.put(name(i, StepField.TIME), FROM_THE_LOAD);
      }
      if (step.band().isPresent() && !exact) {
        values.put(name(i, StepField.TEMPERATURE), units.words(step.band().get()));
      }
    }
    return new ProcessForm(FilledForm.of(values));
  }

  /** A draft as it was typed. */
  static ProcessForm of(ProcessDraft draft) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("slug", draft.slug());
    values.put("name", draft.name());
    values.put("about", draft.about());
    for (int i = 0; i < draft.steps().size(); i++) {
      for (StepField field : StepField.values()) {
        values.put(name(i, field), draft.steps().get(i).value(field));
      }
    }
    return new ProcessForm(FilledForm.of(values));
  }

  /** The name of a step's field, counted from 0. */
  static String name(int step, StepField field) {
    return "step-" + step + "-" + field.word();
  }

  /** How many steps were sent. */
  int steps() {
    int found = 0;
    while (found < MOST && form.values().containsKey(name(found, StepField.KIND))) {
      found++;
    }
    return found;
  }

  /** What is wished for, by somebody who reads these units. */
  ProcessDraft draft(Units units) {
    ProcessDraft typed = draft();
    List<StepDraft> steps = typed.steps().stream().map(step -> scaled(step, units)).toList();
    return new ProcessDraft(typed.slug(), typed.name(), typed.about(), steps);
  }

  /** With the scale of the label behind a temperature that was typed without one. */
  private static StepDraft scaled(StepDraft step, Units units) {
    String band = step.value(StepField.TEMPERATURE);
    if (!band.matches("[^CcFf]+")) {
      return step;
    }
    Map<StepField, String> fields = new EnumMap<>(step.fields());
    fields.put(StepField.TEMPERATURE, band + " " + units.scale().sign());
    return new StepDraft(fields);
  }

  ProcessDraft draft() {
    List<StepDraft> steps = new ArrayList<>();
    for (int i = 0; i < steps(); i++) {
      Map<StepField, String> fields = new EnumMap<>(StepField.class);
      for (StepField field : StepField.values()) {
        fields.put(field, form.value(name(i, field)));
      }
      steps.add(new StepDraft(fields));
    }
    return new ProcessDraft(form.value("slug"), form.value("name"), form.value("about"), steps);
  }

  /**
   * The form after one of its keys beside the steps.
   *
   * @param wish {@code add} a step before all, {@code add-2} one after the third, {@code drop-2},
   *     {@code up-2}, {@code down-2}; anything else changes nothing
   */
  ProcessForm after(String wish) {
    ProcessDraft draft = draft();
    List<StepDraft> steps = new ArrayList<>(draft.steps());
    int dash = wish.lastIndexOf('-');
    String act = dash < 0 ? wish : wish.substring(0, dash);
    int at = dash < 0 ? -1 : number(wish.substring(dash + 1));
    if (act.equals("add") && at >= -1 && at < steps.size()) {
      steps.add(at + 1, new StepDraft(Map.of()));
    } else if (act.equals("drop") && at >= 0 && at < steps.size()) {
      steps.remove(at);
    } else if (act.equals("up") && at >= 1 && at < steps.size()) {
      Collections.swap(steps, at, at - 1);
    } else if (act.equals("down") && at >= 0 && at < steps.size() - 1) {
      Collections.swap(steps, at, at + 1);
    }
    return of(new ProcessDraft(draft.slug(), draft.name(), draft.about(), steps));
  }

  /** The same form with every fault beside its field. */
  FilledForm saying(List<ProcessFault> faults) {
    FilledForm said = form;
    for (ProcessFault fault : faults) {
      String field = fault.field().equals("steps") ? FilledForm.WHOLE : fault.field();
      said =
          said.saying(
              fault.step() == 0 ? field : "step-" + (fault.step() - 1) + "-" + field,
              fault.message());
    }
    return said;
  }

  private static int number(String text) {
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException notOne) {
      return -2;
    }
  }
}
