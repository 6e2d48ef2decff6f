package org.wetside.app.process;

import java.util.List;
import java.util.Locale;
import org.wetside.core.process.FilmProcess;

/**
 * A process as it is typed.
 *
 * @param slug short name; empty to make it from the name
 * @param name as people call it
 * @param about what it is for; may be empty
 * @param steps in order
 */
public record ProcessDraft(String slug, String name, String about, List<StepDraft> steps) {
  public ProcessDraft {
    slug = slug.strip();
    name = name.strip();
    about = about.strip();
    steps = List.copyOf(steps);
  }

  /** A process as it would be typed. */
  public static ProcessDraft of(FilmProcess process) {
    return new ProcessDraft(
        process.slug(),
        process.name(),
        process.about(),
        process.steps().stream().map(StepDraft::of).toList());
  }

  /** The same under another short name and name. */
  public ProcessDraft named(String otherSlug, String otherName) {
    return new ProcessDraft(otherSlug, otherName, about, steps);
  }

  /**
   * The short name, made from the name when none was typed: {@code Harbour tank, 2} has {@code
   * harbour-tank-2}.
   */
  String slugOrMade() {
    if (!slug.isEmpty()) {
      return slug;
    }
    String plain =
        java.text.Normalizer.normalize(name, java.text.Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    return plain.length() <= 60 ? plain : plain.substring(0, 60).replaceAll("-+$", "");
  }
}
