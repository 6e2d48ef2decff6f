package org.wetside.reference;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/** How much replenisher a roll of 80 in² wants, by developer. */
public final class Replenishers {
  /**
   * A rate.
   *
   * @param bath developer and replenisher as the table names them
   * @param perRoll for one roll; the first and larger figure where a source gives two
   * @param words what the source adds
   * @param standing how it is known
   * @param citation where it stands
   */
  public record Rate(
      String bath, Volume perRoll, String words, Standing standing, Citation citation) {}

  private Replenishers() {}

  /** What is on file for a developer of that name. */
  public static Optional<Rate> of(String developer) {
    String name = developer.toLowerCase(Locale.ROOT);
    List<ReferenceRow> rows = ReferenceTable.open("baths/capacity").rows();
    return rows.stream()
        .filter(row -> row.text("what").equals("replenisher"))
        .filter(row -> name.contains(row.text("bath").toLowerCase(Locale.ROOT).split(" ", -1)[0]))
        .findFirst()
        .map(
            row ->
                new Rate(
                    row.text("bath"),
                    Volume.ofMillilitres(Math.max(row.number("least"), row.number("most"))),
                    row.note(),
                    row.standing(),
                    row.citation()));
  }
}
