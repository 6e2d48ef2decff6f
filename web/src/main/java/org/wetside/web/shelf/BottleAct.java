package org.wetside.web.shelf;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.ChangeBottle;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.Clearing;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;

/** What a form on a bottle's page does; the path names it. */
enum BottleAct {
  TAKE("take", "take", "takeNote"),
  POUR_BACK("pour-back", "pourBack", "pourBackNote"),
  TOP_UP("top-up", "topUp", "topUpNote"),
  CORRECT("correct", "correct", "correctReason"),
  PASSED("passed", "test", "testNote"),
  FAILED("failed", "test", "testNote"),
  OPEN("open", "openedOn", ""),
  DECIDE("decide", "decided", "decided"),
  DISCARD("discard", "", "discardNote");

  private final String path;
  private final String field;
  private final String noteField;

  BottleAct(String path, String field, String noteField) {
    this.path = path;
    this.field = field;
    this.noteField = noteField;
  }

  static Optional<BottleAct> of(String path) {
    return Arrays.stream(values()).filter(act -> act.path.equals(path)).findFirst();
  }

  /**
   * Reads its fields and does it.
   *
   * @return what to say; empty when the reader has noted a complaint and nothing was done
   */
  String perform(Wetside wetside, String letter, FieldReader reader, LocalDate today) {
    ChangeBottle change = wetside.changeBottle();
    FilledForm form = reader.form();
    String note = noteField.isEmpty() ? "" : form.value(noteField);
    try {
      return switch (this) {
        case TAKE -> {
          Optional<Volume> volume = volume(reader);
          volume.ifPresent(taken -> change.take(letter, taken, note));
          yield volume.map(v -> reader.units().words(v) + " taken from " + letter + ".").orElse("");
        }
        case POUR_BACK -> {
          Optional<Volume> volume = volume(reader);
          volume.ifPresent(back -> change.pourBack(letter, back, note));
          yield volume
              .map(v -> reader.units().words(v) + " poured back into " + letter + ".")
              .orElse("");
        }
        case TOP_UP -> {
          Optional<Volume> volume = volume(reader);
          Volume out =
              form.isBlank("topUpOut")
                  ? Volume.ZERO
                  : reader.maybeVolume("topUpOut").orElse(Volume.ZERO);
          if (!reader.isGood()) {
            yield "";
          }
          volume.ifPresent(added -> change.topUp(letter, out, added, note));
          yield volume.map(v -> reader.units().words(v) + " added to " + letter + ".").orElse("");
        }
        case CORRECT -> {
          Optional<Volume> volume = volume(reader);
          volume.ifPresent(left -> change.correct(letter, left, note));
          yield volume
              .map(v -> "The book of " + letter + " now says " + reader.units().words(v) + ".")
              .orElse("");
        }
        case OPEN -> {
          boolean blank = form.isBlank(field);
          Optional<LocalDate> day =
              blank ? Optional.of(today) : reader.maybe(field, FieldReader::day);
          day.ifPresent(opened -> change.open(letter, opened));
          yield day.map(d -> "Bottle " + letter + " is open.").orElse("");
        }
        case DECIDE -> {
          change.decide(letter, note);
          yield "Decided: bottle " + letter + " may be used.";
        }
        case PASSED, FAILED -> {
          BathTest test = BathTest.parse(form.value(field));
          if (test == BathTest.CLIP && !form.isBlank("clearing")) {
            Optional<Clearing> clearing = ClearingFields.read(reader);
            if (clearing.isEmpty()) {
              yield "";
            }
            yield TimedElsewhere.said(
                wetside.bathTests().judgeTest().clip(letter, this == PASSED, clearing.get(), note));
          }
          change.tested(letter, test, this == PASSED, note);
          yield "Noted in the book of " + letter + ": " + test.word() + " " + path + ".";
        }
        case DISCARD -> {
          change.discard(letter, note);
          yield "Bottle " + letter + " is off the shelf; its book is kept.";
        }
      };
    } catch (BadValueException refused) {
      reader.refuse(fieldOf(refused), refused);
      return "";
    }
  }

  private String fieldOf(BadValueException refused) {
    return switch (refused.thing()) {
      case "reason of the correction", "reason of the decision" -> noteField;
      case "volume to take out" -> "topUpOut";
      case "fixer of the clip" -> "baseline";
      case "film of the clip" -> "clipFilm";
      case "dilution of the fixer" -> "clipDilution";
      case "temperature of the fixer" -> "clipAt";
      default -> field;
    };
  }

  private Optional<Volume> volume(FieldReader reader) {
    return reader.requiredVolume(field, "volume");
  }
}
