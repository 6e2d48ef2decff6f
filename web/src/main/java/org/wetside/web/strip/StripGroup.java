package org.wetside.web.strip;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.KeptStrip;

/**
 * The strips of one film in one developer.
 *
 * @param name {@code TRI-X 400 in D-76 1+1}
 * @param lines by rising time
 */
public record StripGroup(String name, List<Line> lines) {

  /**
   * One of them.
   *
   * @param id its number
   * @param time {@code 9:40}
   * @param temperature of the developer; empty when nobody said
   * @param day developed on; empty when nobody said
   * @param light calibrated, estimated, relative or camera
   * @param readings how many densities were read
   */
  public record Line(
      long id, String time, String temperature, String day, String light, int readings) {}

  static List<StripGroup> of(List<KeptStrip> strips, org.wetside.core.quantity.Units units) {
    List<StripGroup> groups = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    FilmStrip first = null;
    for (KeptStrip kept : strips) {
      FilmStrip strip = kept.strip();
      if (first == null || !first.isOfOneKindWith(strip)) {
        if (first != null) {
          groups.add(new StripGroup(StripText.kind(first), List.copyOf(lines)));
        }
        first = strip;
        lines.clear();
      }
      lines.add(
          new Line(
              kept.id(),
              StripText.time(strip),
              strip.temperature().map(units::words).orElse(""),
              strip.developedOn().map(Object::toString).orElse(""),
              strip.light().word(),
              strip.readings().size()));
    }
    if (first != null) {
      groups.add(new StripGroup(StripText.kind(first), List.copyOf(lines)));
    }
    return groups;
  }

  /** Whether there are enough of them to be read together. */
  public boolean isFamily() {
    return lines.stream().map(Line::time).distinct().count() >= 2;
  }

  /** Where they are read together. */
  public String familyPath() {
    StringBuilder path = new StringBuilder("/curves/family?");
    lines.forEach(
        line ->
            path.append(path.toString().endsWith("?") ? "" : "&")
                .append("strip=")
                .append(line.id()));
    return path.toString();
  }
}
