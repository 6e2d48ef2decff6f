package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.learning.ContrastBasis;
import org.wetside.core.learning.ContrastWord;
import org.wetside.core.learning.Developed;
import org.wetside.core.learning.EdgePrint;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.Judgement;
import org.wetside.core.learning.ReferencePair;
import org.wetside.core.learning.Seen;
import org.wetside.core.learning.ShadowWord;
import org.wetside.core.learning.Used;

/** Judged rolls; of each roll one judgement counts, those before it stay for the record. */
public final class Judgements {
  private final Session session;

  /** Works in this reading or transaction. */
  public Judgements(Session session) {
    this.session = session;
  }

  /**
   * Keeps a judgement; an earlier one of that roll counts no more.
   *
   * @param judged its identity is not looked at
   * @return the same under its identity
   */
  public Judgement keep(Judgement judged) {
    takeBack(judged.roll(), judged.at());
    Seen seen = judged.seen();
    Developed developed = judged.developed();
    long id =
        session.insert(
            "INSERT INTO judgement (roll, film_code, film, developer, exposure_index, judged_at,"
                + " edge_print, shadows, contrast, base_fog_density, shadow_density, light_density,"
                + " developed_at, lasted_ms, makers_ms, makers_source, series, expected_contrast,"
                + " slope, why_no_contrast, water, thermometer, batch)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            judged.roll(),
            judged.of().filmCode(),
            judged.film(),
            judged.of().developer(),
            judged.index(),
            judged.at(),
            seen.edge().word(),
            seen.shadows().map(ShadowWord::word),
            seen.contrast().map(ContrastWord::word),
            seen.pair().flatMap(ReferencePair::baseFog),
            seen.pair().map(ReferencePair::shadow),
            seen.pair().map(ReferencePair::light),
            developed.at(),
            developed.lasted(),
            developed.makers(),
            developed.makersSource(),
            developed.contrast().map(ContrastBasis::series),
            developed.contrast().map(ContrastBasis::expected),
            developed.contrast().map(ContrastBasis::slope),
            developed.whyNoContrast(),
            judged.used().water(),
            judged.used().thermometer(),
            judged.used().batch());
    return judged.withId(id);
  }

  /**
   * Takes the judgement of a roll back.
   *
   * @return whether there was one that counted
   */
  public boolean takeBack(String roll, Instant at) {
    return session.change(
            "UPDATE judgement SET taken_back_at = ? WHERE roll = ? AND taken_back_at IS NULL",
            at,
            roll.strip())
        == 1;
  }

  /** The judgement of a roll that counts. */
  public Optional<Judgement> of(String roll) {
    return session.first(
        "SELECT * FROM judgement WHERE roll = ? AND taken_back_at IS NULL",
        Judgements::read,
        roll.strip());
  }

  /** All that count, in the order in which the rolls were developed. */
  public List<Judgement> all() {
    return session.list(
        "SELECT * FROM judgement WHERE taken_back_at IS NULL ORDER BY developed_at, id",
        Judgements::read);
  }

  private static Judgement read(Row row) {
    return new Judgement(
        row.whole("id"),
        row.text("roll"),
        new FilmInDeveloper(row.text("film_code"), row.text("developer")),
        row.text("film"),
        row.maybeExposureIndex("exposure_index"),
        row.moment("judged_at"),
        new Seen(
            EdgePrint.parse(row.text("edge_print")),
            row.maybeText("shadows").map(ShadowWord::parse),
            row.maybeText("contrast").map(ContrastWord::parse),
            pair(row)),
        new Developed(
            row.moment("developed_at"),
            row.maybeDuration("lasted_ms"),
            row.maybeDuration("makers_ms"),
            row.text("makers_source"),
            basis(row),
            row.text("why_no_contrast")),
        new Used(row.text("water"), row.text("thermometer"), row.text("batch")));
  }

  private static Optional<ReferencePair> pair(Row row) {
    if (row.maybeNumber("shadow_density").isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble base = row.maybeNumber("base_fog_density");
    return Optional.of(
        new ReferencePair(
            base.isPresent() ? Optional.of(base.getAsDouble()) : Optional.empty(),
            row.number("shadow_density"),
            row.number("light_density")));
  }

  private static Optional<ContrastBasis> basis(Row row) {
    return row.maybeNumber("slope").isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ContrastBasis(
                row.text("series"), row.number("expected_contrast"), row.number("slope")));
  }
}
