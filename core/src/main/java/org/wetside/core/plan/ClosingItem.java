package org.wetside.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.BadValueException;

/**
 * One thing to feel or look at when a tank is closed (common practice).
 *
 * @param id stands in the record: letters, digits and dashes
 * @param text what is asked, 1 to 80 characters
 * @param always whether it is asked even when the tank has proved itself: these lose film most
 */
public record ClosingItem(String id, String text, boolean always) {
  private static final int MOST = 12;

  /** For a tank that holds its film on reels, in the order in which hands meet them. */
  private static final List<ClosingItem> REELS =
      List.of(
          new ClosingItem("reel-dry", "Reel dry and whole", false),
          new ClosingItem("leader-square", "Leader cut square", false),
          new ClosingItem("film-on-edges", "Film runs on the reel's edges, not across", false),
          new ClosingItem("centre-core", "Centre core in", true),
          new ClosingItem("lid-locked", "Lid locked", true),
          new ClosingItem("tug", "One tug at the lid: it holds", true));

  /** For trays, which no lid closes: the room is the tank. */
  private static final List<ClosingItem> TRAYS =
      List.of(
          new ClosingItem("trays-in-order", "Trays in order, each with its bath", false),
          new ClosingItem("hands-dry", "Hands and film dry", false),
          new ClosingItem("room-dark", "Room dark, no light under the door", true));

  public ClosingItem {
    text = text.replaceAll("\\s+", " ").strip();
    if (text.isEmpty() || text.length() > 80) {
      throw new BadValueException("check of the tank", text, "1 to 80 characters");
    }
    if (!id.matches("[a-z0-9-]{1,60}")) {
      throw new BadValueException("check of the tank", id, "its id is letters, digits and dashes");
    }
  }

  /** The usual list for a vessel. */
  public static List<ClosingItem> usual(Vessel vessel) {
    return vessel == Vessel.TRAY ? TRAYS : REELS;
  }

  /** The line that {@link #parse} reads back: a star before what is always asked. */
  public String line() {
    return (always ? "* " : "") + text;
  }

  /**
   * A list from lines, one item each; a star in front of what is always asked. Known words keep
   * their id, so that the record goes on speaking of the same thing.
   *
   * @throws BadValueException when there are more than twelve, or a line is too long
   */
  public static List<ClosingItem> parse(String lines) {
    List<ClosingItem> items = new ArrayList<>();
    for (String line : lines.lines().map(String::strip).filter(one -> !one.isEmpty()).toList()) {
      boolean always = line.startsWith("*");
      String text = always ? line.substring(1).strip() : line;
      items.add(new ClosingItem(freeId(text, items), text, always));
    }
    if (items.size() > MOST) {
      throw new BadValueException(
          "checks of the tank",
          items.size() + " lines",
          "at most " + MOST + ": it is a short check");
    }
    return List.copyOf(items);
  }

  private static String freeId(String text, List<ClosingItem> taken) {
    String wanted =
        REELS.stream()
            .filter(item -> item.text.equalsIgnoreCase(text))
            .map(ClosingItem::id)
            .findFirst()
            .orElseGet(() -> idOf(text));
    String id = wanted;
    for (int n = 2; isTaken(id, taken); n++) {
      id = wanted + "-" + n;
    }
    return id;
  }

  private static boolean isTaken(String id, List<ClosingItem> taken) {
    return taken.stream().anyMatch(item -> item.id.equals(id));
  }

  private static String idOf(String text) {
    String bare = text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String id = bare.replaceAll("^-+|-+$", "");
    return "own-" + (id.length() > 40 ? id.substring(0, 40) : id);
  }
}
