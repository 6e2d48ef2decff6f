package org.wetside.core.waste;

import java.util.Locale;

/**
 * An estimate of silver, always a range with its source and never a single figure.
 *
 * @param leastGrams lower end
 * @param mostGrams upper end
 * @param countedLitres used fixer and bleach-fix, which the figure is about
 * @param leftOutLitres what else is there, of which no figure is on file
 * @param content the figure it is made from
 */
public record SilverEstimate(
    double leastGrams,
    double mostGrams,
    double countedLitres,
    double leftOutLitres,
    SilverContent content) {

  /** In words, with range, source, standing and how far to believe it. */
  public String words() {
    if (countedLitres == 0) {
      return "no estimate of silver: the figure on file is for used fixer, and none is in it";
    }
    String leftOut =
        leftOutLitres > 0
            ? String.format(
                Locale.ROOT, "; %.2f L besides are left out, no figure is on file", leftOutLitres)
            : "";
    return String.format(
            Locale.ROOT,
            "silver roughly %.1f to %.1f g, from %.2f L of used fixer at %s to %s g/L",
            leastGrams,
            mostGrams,
            countedLitres,
            plain(content.leastGramsPerLitre()),
            plain(content.mostGramsPerLitre()))
        + " ("
        + content.citation()
        + ", "
        + content.standing().word()
        + "; "
        + content.note()
        + ")"
        + leftOut;
  }

  private static String plain(double figure) {
    return String.format(Locale.ROOT, "%.1f", figure).replaceFirst("\\.0$", "");
  }
}
