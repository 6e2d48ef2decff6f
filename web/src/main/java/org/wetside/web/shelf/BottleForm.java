package org.wetside.web.shelf;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Storage;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the form for a new bottle.
 *
 * @param sheet the sheet
 * @param form what was typed
 */
public record BottleForm(Sheet sheet, FilledForm form) {
  /** The kinds of bath to choose from. */
  public Map<String, String> baths() {
    Map<String, String> words = new LinkedHashMap<>();
    for (BathKind bath : BathKind.values()) {
      words.put(bath.word(), bath.word());
    }
    return words;
  }

  /** What a bottle may be for. */
  public Map<String, String> roles() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("concentrate", "concentrate, to be diluted");
    words.put("stock", "stock, made up once");
    words.put("working", "working strength, ready to pour");
    words.put("replenisher", "replenisher, added to a bath");
    words.put("waste", "waste, to be handed in");
    return words;
  }

  /** What becomes of it after use. */
  public Map<String, String> uses() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("back", "back into the bottle");
    words.put("replenished", "back, and replenished by the film");
    words.put("away", "thrown away (one-shot)");
    return words;
  }

  /** How it may be kept. */
  public Map<String, String> storages() {
    Map<String, String> words = new LinkedHashMap<>();
    for (Storage storage : Storage.values()) {
      words.put(storage.word(), storage.word());
    }
    return words;
  }

  private static AfterPouring after(String word) {
    return switch (word) {
      case "away" -> AfterPouring.ONE_SHOT;
      case "replenished" -> AfterPouring.REPLENISHED;
      default -> AfterPouring.REUSED;
    };
  }

  /** A bottle read from a form. */
  record Described(BottleLabel label, Volume filled) {}

  /** Reads the form; empty when the reader has noted complaints. */
  static Optional<Described> read(FieldReader reader) {
    FilledForm form = reader.form();
    Optional<Volume> full = reader.requiredVolume("full", "volume when full");
    Optional<Volume> left = reader.maybeVolume("left");
    Optional<LocalDate> mixed = reader.maybe("mixedOn", FieldReader::day);
    Optional<LocalDate> opened = reader.maybe("openedOn", FieldReader::day);
    Optional<BathKind> bath = reader.required("bath", "kind of bath", BathKind::fromWord);
    Optional<BottleRole> role = reader.required("role", "role of the bottle", BottleRole::fromWord);
    reader.required("letter", "letter of the bottle", text -> text);
    reader.required("contents", "contents of the bottle", text -> text);
    if (!reader.isGood() || full.isEmpty() || bath.isEmpty() || role.isEmpty()) {
      return Optional.empty();
    }
    try {
      BottleLabel label =
          BottleLabel.of(
                  form.value("letter"), form.value("contents"), role.get(), bath.get(), full.get())
              .with(after(form.value("use")))
              .with(
                  form.isBlank("storage") ? Storage.FULL : Storage.fromWord(form.value("storage")))
              .withDilution(form.value("dilution"))
              .withBatch(form.value("batch"))
              .withOwner(form.value("owner"))
              .withDays(mixed, opened)
              .withNote(form.value("note"));
      return Optional.of(new Described(label, left.orElse(full.get())));
    } catch (BadValueException refused) {
      reader.refuse(fieldOf(refused), refused);
      return Optional.empty();
    }
  }

  /** The field that a complaint is about. */
  static String fieldOf(BadValueException refused) {
    return switch (refused.thing()) {
      case "letter of the bottle" -> "letter";
      case "contents of the bottle" -> "contents";
      case "volume of the bottle" -> "full";
      case "volume in the bottle" -> "left";
      case "day of mixing" -> "mixedOn";
      case "day of opening" -> "openedOn";
      default -> FilledForm.WHOLE;
    };
  }
}
