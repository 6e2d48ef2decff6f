package org.wetside.store;

import java.util.List;
import java.util.Optional;
import org.wetside.core.shelf.FixerPair;

/** Fixers that are used two after each other. */
public final class FixerPairs {
  private static final String NOW =
      "SELECT p.id, a.letter AS first, b.letter AS second, p.rotations FROM fixer_pair p"
          + " JOIN bottle a ON a.id = p.first_bottle JOIN bottle b ON b.id = p.second_bottle"
          + " WHERE p.over = 0 AND a.discarded = 0 AND b.discarded = 0";
  private static final String ID =
      "(SELECT id FROM bottle WHERE discarded = 0 AND letter = upper(?))";

  private final Session session;

  /** Works in this reading or transaction. */
  public FixerPairs(Session session) {
    this.session = session;
  }

  /** The pairs in use. */
  public List<FixerPair> all() {
    return session.list(NOW + " ORDER BY p.id", FixerPairs::read);
  }

  /** The pair that a bottle belongs to, first or second. */
  public Optional<FixerPair> of(String letter) {
    return all().stream()
        .filter(
            pair -> pair.first().equalsIgnoreCase(letter) || pair.second().equalsIgnoreCase(letter))
        .findFirst();
  }

  /** Begins a pair; both bottles stand on the shelf. */
  public void add(FixerPair pair) {
    session.change(
        "INSERT INTO fixer_pair (first_bottle, second_bottle, rotations) VALUES ("
            + ID
            + ", "
            + ID
            + ", ?)",
        pair.first(),
        pair.second(),
        pair.rotations());
  }

  /** Ends the pair that begins with that bottle. */
  public void end(FixerPair pair) {
    session.change(
        "UPDATE fixer_pair SET over = 1 WHERE over = 0 AND first_bottle = " + ID, pair.first());
  }

  private static FixerPair read(Row row) {
    return new FixerPair(
        row.text("first"), row.text("second"), Math.toIntExact(row.whole("rotations")));
  }
}
