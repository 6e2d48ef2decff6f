package org.wetside.core.development;

import org.wetside.core.quantity.TimeSpan;

/** How steps are said: printed values in the form the source prints them. */
final class Words {
  private Words() {}

  /** For example {@code 6:30 at 70 °F}. */
  static String timeAt(TimeEntry entry) {
    return time(entry) + " at " + entry.printedTemperature();
  }

  /** For example {@code 6:30}, {@code 6:00–8:00}. */
  static String time(TimeEntry entry) {
    String shortest = clock(TimeSpan.toSeconds(entry.time()));
    return entry
        .longest()
        .map(longest -> shortest + "–" + clock(TimeSpan.toSeconds(longest)))
        .orElse(shortest);
  }

  static String clock(double time) {
    long whole = Math.round(time);
    long seconds = whole % 60;
    return whole / 60 + (seconds < 10 ? ":0" : ":") + seconds;
  }

  /** For example {@code 8.2 % per K}. */
  static String slope(double lnPerK) {
    return oneDecimal((1 - Math.exp(lnPerK)) * 100) + " % less for each K";
  }

  static String oneDecimal(double value) {
    long tenths = Math.round(Math.abs(value) * 10);
    return (value < 0 && tenths > 0 ? "-" : "") + tenths / 10 + '.' + tenths % 10;
  }

  static String twoDecimals(double value) {
    long hundredths = Math.round(Math.abs(value) * 100);
    return hundredths / 100 + (hundredths % 100 < 10 ? ".0" : ".") + hundredths % 100;
  }

  /** For example {@code ×1.19}. */
  static String factor(double ln) {
    return "×" + twoDecimals(Math.exp(ln));
  }

  /** For example {@code 400} or {@code 33.6}. */
  static String index(double isoArithmetic) {
    return isoArithmetic == Math.rint(isoArithmetic)
        ? Long.toString(Math.round(isoArithmetic))
        : oneDecimal(isoArithmetic);
  }
}
