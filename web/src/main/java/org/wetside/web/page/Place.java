package org.wetside.web.page;

/** The places of Wetside in the order of the evening, as the navigation shows them. */
public enum Place {
  /** Tonight. */
  PLAN("/", "Plan"),
  /** Exposed rolls. */
  DRAWER("/drawer", "Drawer"),
  /** The timed run. */
  BENCH("/bench", "Bench"),
  /** Bottles. */
  SHELF("/shelf", "Shelf"),
  /** Development times. */
  TIMES("/times", "Times"),
  /** Measured film and development. */
  CURVES("/curves", "Curves"),
  /** Filed rolls. */
  NEGATIVES("/negatives", "Negatives"),
  /** Tanks, reels, thermometers. */
  EQUIPMENT("/equipment", "Equipment");

  private final String path;
  private final String word;

  Place(String path, String word) {
    this.path = path;
    this.word = word;
  }

  /** Where the place is found. */
  public String path() {
    return path;
  }

  /** Its name. */
  public String word() {
    return word;
  }
}
