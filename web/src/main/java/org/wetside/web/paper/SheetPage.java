package org.wetside.web.paper;

import java.util.List;
import java.util.Locale;

/**
 * Model of the printed run sheet.
 *
 * @param sheet what stands on it
 * @param words its figures as they are printed
 * @param rows the run
 * @param tape the run as a strip
 * @param room how much room each line has
 * @param paper {@code a4} or {@code letter}
 * @param style the style sheet
 */
public record SheetPage(
    SheetView sheet,
    SheetWords words,
    List<SheetRow> rows,
    Tape tape,
    Room room,
    String paper,
    String style) {
  private static final int MOST_REELS_DRAWN = 4;

  /** Keeps an unmodifiable copy. */
  public SheetPage {
    rows = List.copyOf(rows);
  }

  /** How much room a line has, most first. A sheet takes the first in which it fits one page. */
  public enum Room {
    ROOMY("roomy", false),
    CLOSE("close", false),
    /** Only developers keep a line of their own for the drain. */
    BRIEF("close", true),
    TIGHT("tight", true),
    /** Without the strip, and with one line to write on. */
    FINE("tight fine", true);

    private final String word;
    private final boolean brief;

    Room(String word, boolean brief) {
      this.word = word;
      this.brief = brief;
    }

    /** For the style sheet. */
    public String word() {
      return word;
    }

    boolean isBrief() {
      return brief;
    }
  }

  /** Whether the tank is drawn: trays and tall drums are only told. */
  public boolean drawsTank() {
    boolean lid = sheet.steps().stream().anyMatch(SheetView.SheetStep::dark);
    return lid && sheet.rolls().size() <= MOST_REELS_DRAWN;
  }

  /** Whether there is room for the strip, and for a second line to write on. */
  public boolean hasStrip() {
    return room != Room.FINE;
  }

  /** Whether only this machine can follow the code. */
  public boolean onlyHere() {
    return sheet.address().startsWith("http://localhost:");
  }

  /** The address without the words every address begins with. */
  public String shortAddress() {
    return sheet.address().replaceFirst("^https?://", "");
  }

  /** Moments of agitation, so many to a line. */
  public static List<List<String>> lines(List<String> ticks) {
    int most = 12;
    return java.util.stream.IntStream.iterate(0, from -> from < ticks.size(), from -> from + most)
        .mapToObj(from -> ticks.subList(from, Math.min(from + most, ticks.size())))
        .toList();
  }

  /** The baths of a caution, as a sentence begins. */
  public static String baths(SheetView.SheetCare care) {
    String all = String.join(", ", care.baths());
    return all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1);
  }
}
