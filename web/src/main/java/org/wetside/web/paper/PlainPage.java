package org.wetside.web.paper;

/** A page of plain text, 78 signs wide, for a terminal or a printer that knows nothing else. */
public final class PlainPage {
  private static final int WIDTH = 78;

  private final StringBuilder text = new StringBuilder();

  /** An underlined line with an empty one before it. */
  public void heading(String words) {
    line("");
    line(words);
    line("-".repeat(words.length()));
  }

  /** A line as it stands. */
  public void line(String words) {
    text.append(words.stripTrailing()).append('\n');
  }

  /**
   * Broken at spaces; what follows stands under the first word.
   *
   * @param before stands before the first word
   */
  public void wrapped(String before, String words) {
    StringBuilder line = new StringBuilder(before);
    boolean fresh = true;
    for (String word : words.split(" ", -1)) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line.setLength(0);
        line.append(" ".repeat(before.length()));
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    line(line.toString());
  }

  /** Words with blanks behind them up to that width, at least one. */
  public static String padded(String words, int width) {
    return words + " ".repeat(Math.max(1, width - words.length()));
  }

  /** All that was written. */
  @Override
  public String toString() {
    return text.toString();
  }
}
