package org.wetside.web.testroll;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.testroll.TestRollDraft;
import org.wetside.app.testroll.TestRollReader;
import org.wetside.app.times.TimeWords;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Units;
import org.wetside.core.testroll.CameraRange;
import org.wetside.core.testroll.TestRoll;
import org.wetside.web.page.FilledForm;

/** The form by which a test roll is planned, read with every complaint. */
final class TestRollForm {
  private FilledForm form;
  private final Optional<TestRoll> roll;

  TestRollForm(FilledForm typed, Units units) {
    TestRollReader reader = new TestRollReader(units);
    roll = reader.readComplete(draft(typed));
    form = typed;
    for (Map.Entry<String, BadValueException> problem : reader.problems().entrySet()) {
      form = form.saying(problem.getKey(), problem.getValue());
    }
  }

  /** As it was typed, with every complaint. */
  FilledForm shown() {
    return form;
  }

  /** The roll; empty when it was refused. */
  Optional<TestRoll> roll() {
    return roll;
  }

  /** A roll as it would be typed. */
  static FilledForm filled(TestRoll roll, Units units) {
    Map<String, String> values = new LinkedHashMap<>(camera(roll.plan().range()));
    values.put("film", roll.film());
    values.put("index", roll.index().map(TestRollForm::index).orElse(""));
    values.put("developer", roll.developer());
    values.put(
        "dilution", roll.dilution() instanceof Dilution.Unknown ? "" : roll.dilution().label());
    values.put("temp", roll.temperature().map(units::words).orElse(""));
    values.put("vessel", roll.vessel().word());
    values.put("metered", roll.plan().metered().toString());
    values.put("middle", TimeWords.clock(roll.plan().times().middle()));
    return FilledForm.of(values);
  }

  /** What stands in the fields of a new one. */
  static FilledForm blank() {
    return FilledForm.of(camera(CameraRange.USUAL));
  }

  private static Map<String, String> camera(CameraRange range) {
    return Map.of(
        "fastest", range.fastest().toString(),
        "slowest", range.slowest().toString(),
        "widest", range.widest().toString(),
        "smallest", range.smallest().toString());
  }

  private static String index(ExposureIndex index) {
    return TestRollSheet.plain(index.isoArithmetic());
  }

  private static TestRollDraft draft(FilledForm form) {
    return new TestRollDraft(
        form.value("film"),
        form.value("index"),
        form.value("developer"),
        form.value("dilution"),
        form.value("temp"),
        form.value("vessel"),
        form.value("metered"),
        form.value("middle"),
        "",
        form.value("fastest"),
        form.value("slowest"),
        form.value("widest"),
        form.value("smallest"));
  }
}
