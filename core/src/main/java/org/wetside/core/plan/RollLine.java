package org.wetside.core.plan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.ExposureIndex;

/**
 * A roll in one line: {@code [number] format [frames] film [C-41|E-6] [@index] ["title"] [on
 * 2026-01-15] [of anna] [precious]}, for example {@code 135 36 T-MAX 400 @800 "harbour"} or {@code
 * TM-01 120 TRI-X @400}. Without an index the roll was exposed at a speed nobody wrote down.
 */
public final class RollLine {
  private static final String EXAMPLE = "for example 135 36 TRI-X 400 @400 \"harbour\"";
  private static final Pattern TITLE = Pattern.compile("[\"“”„«»]([^\"“”„«»]*)[\"“”«»]");
  private static final Pattern DAY = Pattern.compile("(?i)\\bon\\s+(\\d{4}-\\d{1,2}-\\d{1,2})");

  private static final Pattern OWNER =
      Pattern.compile("(?i)\\s+of\\s+([\\p{L}\\p{N}][\\p{L}\\p{N}.'-]*)");

  private final String typed;
  private String rest;

  private RollLine(String typed) {
    this.typed = typed.strip();
    this.rest = this.typed;
  }

  /**
   * Reads one line.
   *
   * @throws BadValueException naming the part that is wrong and what would be right
   */
  public static RollDraft parse(String line) {
    return new RollLine(line).draft();
  }

  private RollDraft draft() {
    if (typed.isEmpty()) {
      throw new BadValueException("roll", typed, "write format, frames and film, " + EXAMPLE);
    }
    String title = takeTitle();
    Optional<LocalDate> exposedOn = takeDay();
    String owner = takeOwner();
    List<String> words = words();
    boolean precious = takeLast(words, "precious");
    Optional<ExposureIndex> index = takeIndex(words);
    Optional<String> number =
        words.size() > 1
                && RollNumber.looksLike(words.get(0))
                && FilmSize.find(words.get(1)).isPresent()
            ? Optional.of(words.remove(0))
            : Optional.empty();
    FilmSize size = takeSize(words);
    Optional<Integer> frames = takeFrames(words, size);
    FilmKind kind = takeKind(words);
    if (words.isEmpty()) {
      throw new BadValueException(
          "roll", typed, "the film is missing after " + size.word() + ", " + EXAMPLE);
    }
    return new RollDraft(
        number,
        size,
        frames,
        String.join(" ", words),
        kind,
        index,
        title,
        precious,
        exposedOn,
        "",
        owner);
  }

  private String takeTitle() {
    Matcher matcher = TITLE.matcher(rest);
    String title = "";
    if (matcher.find()) {
      title = matcher.group(1);
      rest = rest.substring(0, matcher.start()) + " " + rest.substring(matcher.end());
    }
    if (rest.matches(".*[\"“”„«»].*")) {
      throw new BadValueException(
          "roll", typed, "the title needs one quotation mark before and one after it");
    }
    return title;
  }

  private Optional<LocalDate> takeDay() {
    Matcher matcher = DAY.matcher(rest);
    if (!matcher.find()) {
      return Optional.empty();
    }
    rest = rest.substring(0, matcher.start()) + " " + rest.substring(matcher.end());
    return Optional.of(day(matcher.group(1)));
  }

  /** One word: who has more names writes them in the form. */
  private String takeOwner() {
    Matcher matcher = OWNER.matcher(rest);
    if (!matcher.find()) {
      return "";
    }
    rest = rest.substring(0, matcher.start()) + " " + rest.substring(matcher.end());
    return matcher.group(1);
  }

  /**
   * Reads a day.
   *
   * @throws BadValueException when there is no such day
   */
  public static LocalDate day(String text) {
    try {
      List<String> parts = List.of(text.strip().split("-", -1));
      return LocalDate.of(
          Integer.parseInt(parts.get(0)),
          Integer.parseInt(parts.get(1)),
          Integer.parseInt(parts.get(2)));
    } catch (DateTimeException | NumberFormatException | IndexOutOfBoundsException noDay) {
      throw new BadValueException(
          "day of exposure", text, "write year-month-day, for example 2026-01-15");
    }
  }

  private List<String> words() {
    List<String> words = new ArrayList<>();
    for (String word : rest.strip().split("\\s+", -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return words;
  }

  private static boolean takeLast(List<String> words, String wanted) {
    int last = words.size() - 1;
    if (last >= 0 && words.get(last).equalsIgnoreCase(wanted)) {
      words.remove(last);
      return true;
    }
    return false;
  }

  private Optional<ExposureIndex> takeIndex(List<String> words) {
    Optional<ExposureIndex> found = Optional.empty();
    for (int i = words.size() - 1; i >= 0; i--) {
      if (words.get(i).startsWith("@")) {
        if (found.isPresent()) {
          throw new BadValueException("roll", typed, "only one @index, " + EXAMPLE);
        }
        found = Optional.of(ExposureIndex.parse(words.remove(i)));
      }
    }
    return found;
  }

  private FilmSize takeSize(List<String> words) {
    String first = words.isEmpty() ? "" : words.remove(0);
    return FilmSize.find(first)
        .orElseThrow(
            () ->
                new BadValueException("format", first, FilmSize.choices() + " first, " + EXAMPLE));
  }

  private static Optional<Integer> takeFrames(List<String> words, FilmSize size) {
    if (words.isEmpty() || !words.get(0).matches("\\d{1,2}")) {
      return Optional.empty(); // three digits are part of a name
    }
    return Optional.of(size.requireFrames(Integer.parseInt(words.remove(0))));
  }

  private static FilmKind takeKind(List<String> words) {
    for (int i = 1; i < words.size(); i++) {
      Optional<FilmKind> kind = FilmKind.find(words.get(i));
      if (kind.isPresent()) {
        words.remove(i);
        return kind.get();
      }
    }
    return FilmKind.BLACK_AND_WHITE;
  }
}
