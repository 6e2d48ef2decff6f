package org.wetside.store;

import java.time.Instant;
import java.util.List;
import org.wetside.core.development.OwnFactor;
import org.wetside.core.learning.AcceptedFactor;

/**
 * Factors on printed times that their user has accepted; of a film in a developer one is in use.
 */
public final class OwnFactors {
  private final Session session;

  /** Works in this reading or transaction. */
  public OwnFactors(Session session) {
    this.session = session;
  }

  /** Takes a factor into use, in the place of an earlier one. */
  public void accept(OwnFactor factor, Instant at) {
    boolean unused = takeBack(factor.filmCode(), factor.developer(), at);
    session.change(
        "INSERT INTO own_factor (film_code, developer, ln_factor, ln_sd, rolls, accepted_at)"
            + " VALUES (?, ?, ?, ?, ?, ?)",
        factor.filmCode(),
        factor.developer(),
        factor.lnFactor(),
        factor.lnSd(),
        factor.rolls(),
        at);
  }

  /**
   * Takes a factor out of use.
   *
   * @return whether there was one in use
   */
  public boolean takeBack(String filmCode, String developer, Instant at) {
    return session.change(
            "UPDATE own_factor SET taken_back_at = ? WHERE film_code = ? AND developer = ?"
                + " AND taken_back_at IS NULL",
            at,
            filmCode,
            developer)
        == 1;
  }

  /** Those in use. */
  public List<AcceptedFactor> inUse() {
    return session.list(
        "SELECT * FROM own_factor WHERE taken_back_at IS NULL ORDER BY id", OwnFactors::read);
  }

  private static AcceptedFactor read(Row row) {
    return new AcceptedFactor(
        new OwnFactor(
            row.text("film_code"),
            row.text("developer"),
            row.number("ln_factor"),
            row.number("ln_sd"),
            (int) row.whole("rolls")),
        row.moment("accepted_at"));
  }
}
