package org.wetside.app.times;

import org.wetside.core.source.Source;
import org.wetside.reference.Bibliography;

/** What a source id stands for, in words. */
public final class SourceTitles {
  private static final class Read {
    private static final Bibliography ALL = Bibliography.open();

    private Read() {}
  }

  private SourceTitles() {}

  /** Title and publication; for what a user typed, just that. */
  public static String of(String sourceId) {
    return Read.ALL.find(sourceId).map(SourceTitles::words).orElse(sourceId);
  }

  private static String words(Source source) {
    return source.publication().isEmpty()
        ? source.title()
        : source.title() + " (" + source.publication() + ")";
  }
}
