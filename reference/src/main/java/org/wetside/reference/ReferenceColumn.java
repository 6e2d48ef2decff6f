package org.wetside.reference;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a file says of one of its columns of numbers, on a line such as {@code #: temperature_c [°C]
 * 0 .. 100}. A column whose unit stands on the row has one such line for each unit.
 *
 * @param name the column
 * @param unit its unit; {@code 1} when it has none
 * @param least plausible
 * @param most plausible
 */
public record ReferenceColumn(String name, String unit, double least, double most) {
  private static final Pattern FORM =
      Pattern.compile(":\\s*(\\S+)\\s+\\[([^\\]]+)\\]\\s+(\\S+)\\s*\\.\\.\\s*(\\S+)");

  static Optional<ReferenceColumn> parse(String remark) {
    if (!remark.startsWith(":")) {
      return Optional.empty();
    }
    Matcher matcher = FORM.matcher(remark);
    if (!matcher.matches()) {
      throw new IllegalStateException("not a column line: #" + remark);
    }
    return Optional.of(
        new ReferenceColumn(
            matcher.group(1),
            matcher.group(2),
            Double.parseDouble(matcher.group(3)),
            Double.parseDouble(matcher.group(4))));
  }
}
