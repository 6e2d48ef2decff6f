package org.wetside.web.drawer;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetside.core.plan.FilmKind;
import org.wetside.core.plan.FilmSize;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollDraft;
import org.wetside.core.plan.RollLine;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.web.page.FilledForm;

/** The fields of a roll: from a form to a roll, back, and which message belongs beside which. */
final class RollForm {
  private static final Map<String, String> FIELD_OF =
      Map.ofEntries(
          Map.entry("roll number", "number"),
          Map.entry("format", "format"),
          Map.entry("frames", "frames"),
          Map.entry("film", "film"),
          Map.entry("kind of film", "kind"),
          Map.entry("exposure index", "ei"),
          Map.entry("day of exposure", "exposed"),
          Map.entry("title", "title"),
          Map.entry("note", "note"),
          Map.entry("owner of a roll", "owner"));

  private RollForm() {}

  static RollDraft draft(FilledForm form) {
    return new RollDraft(
        maybe(form, "number", Function.identity()),
        FilmSize.parse(form.value("format")),
        maybe(form, "frames", RollForm::frames),
        form.value("film"),
        FilmKind.parse(form.value("kind")),
        maybe(form, "ei", ExposureIndex::parse),
        form.value("title"),
        !form.isBlank("precious"),
        maybe(form, "exposed", RollLine::day),
        form.value("note"),
        form.value("owner"));
  }

  static FilledForm of(Roll roll) {
    RollDraft said = roll.described();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("number", roll.number());
    values.put("format", said.size().word());
    values.put("frames", said.frames().map(String::valueOf).orElse(""));
    values.put("film", said.film());
    values.put("filmCode", roll.filmCode().orElse(""));
    values.put("kind", said.kind().word());
    values.put(
        "ei", said.exposureIndex().map(index -> index.toString().replace("EI ", "")).orElse(""));
    values.put("title", said.title());
    values.put("precious", said.precious() ? "yes" : "");
    values.put("exposed", said.exposedOn().map(Object::toString).orElse(""));
    values.put("note", said.note());
    values.put("owner", said.owner());
    return FilledForm.of(values);
  }

  /** A form nobody has touched. */
  static FilledForm fresh() {
    return FilledForm.of(Map.of("format", FilmSize.SMALL.word()));
  }

  static FilledForm refused(FilledForm form, BadValueException refusal) {
    return form.saying(FIELD_OF.getOrDefault(refusal.thing(), FilledForm.WHOLE), refusal);
  }

  static Map<String, String> sizes() {
    Map<String, String> words = new LinkedHashMap<>();
    for (FilmSize size : FilmSize.values()) {
      words.put(size.word(), size.word());
    }
    return words;
  }

  static Map<String, String> kinds() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put(FilmKind.BLACK_AND_WHITE.word(), "black-and-white");
    words.put(FilmKind.COLOUR_NEGATIVE.word(), "colour negative, C-41");
    words.put(FilmKind.SLIDE.word(), "slide, E-6");
    return words;
  }

  private static int frames(String text) {
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException noNumber) {
      throw new BadValueException("frames", text, "write a whole number, for example 36");
    }
  }

  private static <T> Optional<T> maybe(FilledForm form, String name, Function<String, T> read) {
    return form.isBlank(name) ? Optional.empty() : Optional.of(read.apply(form.value(name)));
  }
}
