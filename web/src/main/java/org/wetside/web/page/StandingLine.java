package org.wetside.web.page;

import org.wetside.core.source.Standing;

/** The line that stands under a figure: double, solid, dashed, dotted, wavy. */
public final class StandingLine {
  private StandingLine() {}

  /** The class of the style sheet that draws the line of that standing. */
  public static String of(Standing standing) {
    return switch (standing) {
      case MEASURED -> "measured";
      case PUBLISHED -> "published";
      case COMPUTED -> "computed";
      case COMMON_PRACTICE -> "common";
      case FROM_MEMORY -> "memory";
    };
  }
}
