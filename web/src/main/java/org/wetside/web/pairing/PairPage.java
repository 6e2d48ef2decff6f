package org.wetside.web.pairing;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import org.wetside.app.screens.Known;
import org.wetside.app.screens.PairOutcome;
import org.wetside.web.page.Count;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;
import org.wetside.web.rolls.Days;

/**
 * Model of the pairing page, all that a screen sees that is not let in.
 *
 * @param sheet the sheet
 * @param sentence how things stand
 * @param key the key of the code that was photographed; empty when there is none yet
 * @param form name and, without a key, figures
 */
public record PairPage(Sheet sheet, String sentence, String key, FilledForm form) {
  private static final String SHOW_ANOTHER = " Show a new code on a screen that is let in.";

  /** For a screen that came without a code. */
  static PairPage unpaired(Sheet sheet, Context ctx, String why) {
    return new PairPage(sheet, why, "", FilledForm.of(Map.of("name", usualName(ctx))));
  }

  /** For a screen that came by the drawn code. */
  static PairPage withKey(Sheet sheet, Context ctx, String key) {
    return new PairPage(
        sheet,
        "One press lets this screen in.",
        key,
        FilledForm.of(Map.of("name", usualName(ctx))));
  }

  /** Why a screen is not let in. */
  static String why(Known who, boolean hasKey, Clock clock) {
    if (who instanceof Known.Removed removed) {
      return "This screen, "
          + removed.name()
          + ", was removed on "
          + Days.of(clock).day(removed.at())
          + " at "
          + minute(removed.at())
          + ".";
    }
    return hasKey
        ? "This screen was paired with other data, not with these."
        : "This screen is not paired yet.";
  }

  /** What came of a code that let nobody in. */
  static String words(PairOutcome refused) {
    if (refused instanceof PairOutcome.Wrong wrong) {
      return "That is not the code that is shown. "
          + Count.of(wrong.triesLeft(), "try", "tries")
          + (wrong.triesLeft() == 1 ? " is left." : " are left.");
    }
    if (refused instanceof PairOutcome.Used) {
      return "That code has let a screen in already; each does so once." + SHOW_ANOTHER;
    }
    if (refused instanceof PairOutcome.Expired expired) {
      return "That code ended at " + Days.clock(expired.at()) + "." + SHOW_ANOTHER;
    }
    return refused instanceof PairOutcome.TooManyTries
        ? "Wrong codes were tried too often, so the code has ended." + SHOW_ANOTHER
        : "No code is shown at the moment." + SHOW_ANOTHER;
  }

  /** What the device is, as far as it says; its owner may write another name. */
  private static String usualName(Context ctx) {
    String agent = String.valueOf(ctx.userAgent()).toLowerCase(Locale.ROOT);
    if (agent.contains("ipad") || agent.contains("tablet")) {
      return "tablet";
    }
    return agent.contains("mobi") ? "phone" : "laptop";
  }

  private static String minute(Instant at) {
    return Days.clock(at).substring(0, "00:00".length());
  }
}
