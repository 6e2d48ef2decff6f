package org.wetside.web.waste;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of one jug.
 *
 * @param sheet the sheet
 * @param jug the jug
 * @param form what was typed into one of its forms
 */
public record JugPage(Sheet sheet, JugView jug, FilledForm form) {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

  /** Where a jug is. */
  public static String pathTo(JugView jug) {
    return WastePages.pathOf(jug.jug());
  }

  /** Where it is. */
  public String path() {
    return WastePages.pathOf(jug.jug());
  }

  /** The day of a moment, where the reader is. */
  public static String day(String at) {
    return DAY.format(Instant.parse(at).atZone(ZoneId.systemDefault()));
  }
}
