package org.wetside.store;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wetside.core.plan.Roll;

/** Finds rolls by any word written of them; the only place that knows how the words are kept. */
public final class RollSearch {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");
  private static final int MOST = 500;

  private final Session session;

  /** Works in this reading or transaction. */
  public RollSearch(Session session) {
    this.session = session;
  }

  /** Writes down what its owner says of a roll; what was done to it stays as it is. */
  public void describe(Roll roll) {
    String said =
        String.join(
            " ",
            roll.described().title(),
            roll.described().note(),
            roll.described().owner(),
            roll.described().exposedOn().map(Object::toString).orElse(""),
            roll.described().exposureIndex().map(Object::toString).orElse(""));
    String film = roll.described().film() + " " + roll.filmCode().orElse("");
    int known =
        session.change(
            "UPDATE roll_words SET number = ?, film = ?, title = ?"
                + " WHERE rowid = (SELECT id FROM roll WHERE number = ?)",
            roll.number(),
            film,
            said,
            roll.number());
    if (known == 0) {
      session.change(
          "INSERT INTO roll_words (rowid, number, film, title, developer, record)"
              + " SELECT id, ?, ?, ?, '', '' FROM roll WHERE number = ?",
          roll.number(),
          film,
          said,
          roll.number());
    }
  }

  /**
   * Writes down what was done to a roll: to be called in the transaction that finishes its run.
   *
   * @param number the roll
   * @param developer developer and dilution
   * @param record everything else worth finding: dates, tank, bottles, mishaps, notes
   */
  public void keepRecord(String number, String developer, String record) {
    session.change(
        "UPDATE roll_words SET developer = ?, record = ?"
            + " WHERE rowid = (SELECT id FROM roll WHERE number = ?)",
        developer,
        record,
        number);
  }

  /**
   * Numbers of the rolls of which every word was written, or a word that begins so; best match
   * first, at most 500. Without a word nothing is found.
   */
  public List<String> find(String text) {
    String words =
        WORD.matcher(text)
            .results()
            .map(match -> "\"" + match.group() + "\"*")
            .collect(Collectors.joining(" "));
    return words.isEmpty()
        ? List.of()
        : session.list(
            "SELECT roll.number AS number FROM roll_words JOIN roll ON roll.id = roll_words.rowid"
                + " WHERE roll_words MATCH ? ORDER BY bm25(roll_words), roll.number LIMIT "
                + MOST,
            row -> row.text("number"),
            words);
  }
}
