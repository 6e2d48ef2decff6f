package org.wetside.web.page;

/** How a thing is known and where it stands, as a label ends a sentence. */
public final class Known {
  /** Stands in the files for what no single source says; nobody is to be shown it. */
  private static final String NO_SINGLE_SOURCE = "TRADE";

  private Known() {}

  /**
   * For example {@code published, CH-S01}; where there is no source of its own, the first alone.
   */
  public static String words(String standing, String source) {
    boolean own = !source.isBlank() && !source.equals(NO_SINGLE_SOURCE) && !source.equals(standing);
    return own ? standing + ", " + source : standing;
  }
}
