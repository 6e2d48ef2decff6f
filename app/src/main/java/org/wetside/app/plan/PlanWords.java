package org.wetside.app.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import org.wetside.app.times.TimeWords;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.bath.StockRequirement;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.plan.Sharing;
import org.wetside.core.quantity.Units;

/** Reasons and checks of a load in words; the only place where they are worded. */
public final class PlanWords {
  private PlanWords() {}

  /** Why rolls may not share a tank, as a sentence. */
  public static String of(Sharing.Reason reason) {
    if (reason instanceof Sharing.OtherKind kinds) {
      return kinds.number()
          + " is "
          + kinds.kind().word()
          + " film and "
          + kinds.other()
          + " is "
          + kinds.otherKind().word()
          + ": they need different chemistry.";
    }
    if (reason instanceof Sharing.NoRoom none) {
      return none.number()
          + " is "
          + none.size().word()
          + " film, and "
          + none.tank()
          + " has no reel for it.";
    }
    if (reason instanceof Sharing.TooMany many) {
      return many.tank() + " does not take " + reels(many.reels()) + " at once.";
    }
    if (reason instanceof Sharing.TimesApart apart) {
      return String.format(
          Locale.ROOT,
          "%s wants %s and %s wants %s: no time is within %.0f %% of both.",
          apart.shorter(),
          TimeWords.clock(apart.shorterTime()),
          apart.longer(),
          TimeWords.clock(apart.longerTime()),
          apart.tolerance() * 100);
    }
    throw new IllegalStateException("no words for " + reason);
  }

  /** What sharing costs a roll, for example {@code TM-03 +3 % of its own 9:30}. */
  public static String of(Sharing.Deviation deviation) {
    return String.format(
        Locale.ROOT,
        "%s %+.0f %% of its own %s",
        deviation.number(),
        deviation.timeError() * 100,
        TimeWords.clock(deviation.ownTime()));
  }

  /** Whether there is enough developer, as a sentence in those units. */
  public static String of(StockRequirement stock, Units units) {
    if (stock instanceof StockRequirement.Enough enough) {
      return units.words(enough.present())
          + " of stock for this film; the minimum is "
          + units.words(enough.needed())
          + " ("
          + cited(enough.minimum())
          + ").";
    }
    if (stock instanceof StockRequirement.TooLittle little) {
      return "Only "
          + units.words(little.present())
          + " of stock for this film; the maker asks for "
          + units.words(little.needed())
          + " ("
          + cited(little.minimum())
          + "). Take a larger fill, fewer rolls or less dilution.";
    }
    return units.words(stock.present())
        + " of stock for this film. The maker's minimum is not on file: enter it from the leaflet.";
  }

  private static String cited(StockMinimum minimum) {
    return minimum.standing().word() + ", " + minimum.citation();
  }

  private static String reels(Map<FilmFormat, Integer> reels) {
    StringJoiner words = new StringJoiner(" and ");
    reels.forEach(
        (format, count) ->
            words.add(count + " " + format.word() + (count == 1 ? " reel" : " reels")));
    return words.toString();
  }

  /** Sentences one after another. */
  public static String all(List<String> sentences) {
    return String.join(" ", sentences);
  }
}
