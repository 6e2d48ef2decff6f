package org.wetside.store;

import java.time.Instant;
import java.util.List;
import org.wetside.core.learning.AcceptedIndex;
import org.wetside.core.learning.Belief;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.OwnIndex;

/** Own indexes that their user has accepted; of a film in a developer one is in use. */
public final class OwnIndexes {
  private final Session session;

  /** Works in this reading or transaction. */
  public OwnIndexes(Session session) {
    this.session = session;
  }

  /** Takes an index into use, in the place of an earlier one. */
  public void accept(FilmInDeveloper of, OwnIndex index, Instant at) {
    boolean unused = takeBack(of, at);
    session.change(
        "INSERT INTO own_index (film_code, developer, exposed_index, stops, stops_sd, rolls,"
            + " accepted_at) VALUES (?, ?, ?, ?, ?, ?, ?)",
        of.filmCode(),
        of.developer(),
        index.exposed(),
        index.belief().mean(),
        index.belief().sd(),
        index.belief().rolls(),
        at);
  }

  /**
   * Takes an index out of use.
   *
   * @return whether there was one in use
   */
  public boolean takeBack(FilmInDeveloper of, Instant at) {
    return session.change(
            "UPDATE own_index SET taken_back_at = ? WHERE film_code = ? AND developer = ?"
                + " AND taken_back_at IS NULL",
            at,
            of.filmCode(),
            of.developer())
        == 1;
  }

  /** Those in use. */
  public List<AcceptedIndex> inUse() {
    return session.list(
        "SELECT * FROM own_index WHERE taken_back_at IS NULL ORDER BY id", OwnIndexes::read);
  }

  private static AcceptedIndex read(Row row) {
    return new AcceptedIndex(
        new FilmInDeveloper(row.text("film_code"), row.text("developer")),
        new OwnIndex(
            row.maybeExposureIndex("exposed_index").orElseThrow(),
            new Belief(row.number("stops"), row.number("stops_sd"), (int) row.whole("rolls"))),
        row.moment("accepted_at"));
  }
}
