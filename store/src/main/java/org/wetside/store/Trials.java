package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialEnd;
import org.wetside.core.trial.TrialKind;

/** Tests of bottles and of washed film, those that still run and those that are over. */
public final class Trials {
  private static final String ON_SHELF =
      "bottle_id = (SELECT id FROM bottle WHERE discarded = 0 AND letter = ?)";

  private final Session session;

  /** Works in this reading or transaction. */
  public Trials(Session session) {
    this.session = session;
  }

  /**
   * Begins a test of the bottle of that letter on the shelf; none of it may be open.
   *
   * @return its number
   */
  public long start(TrialKind kind, String letter, Optional<ClipWish> clip, Instant at) {
    return session.insert(
        "INSERT INTO bath_test (kind, bottle_id, letter, clip_film, clip_dilution,"
            + " clip_temperature_c, fresh, started_at) VALUES (?,"
            + " (SELECT id FROM bottle WHERE discarded = 0 AND letter = ?), ?, ?, ?, ?, ?, ?)",
        kind.word(),
        key(letter),
        key(letter),
        clip.map(ClipWish::film),
        clip.map(ClipWish::dilution),
        clip.map(wish -> wish.temperature().celsius()),
        clip.map(ClipWish::fresh),
        at);
  }

  /**
   * Begins a test of washed film.
   *
   * @return its number
   */
  public long startOfFilm(TrialKind kind, List<String> rolls, Instant at) {
    long id =
        session.insert(
            "INSERT INTO bath_test (kind, letter, started_at) VALUES (?, '', ?)", kind.word(), at);
    for (String roll : rolls) {
      session.change("INSERT INTO bath_test_roll (test_id, roll) VALUES (?, ?)", id, roll);
    }
    return id;
  }

  /** One test. */
  public Optional<Trial> find(long id) {
    return session.first("SELECT * FROM bath_test WHERE id = ?", this::read, id);
  }

  /** The open test of the bottle of that letter on the shelf. */
  public Optional<Trial> openOf(String letter) {
    return session.first(
        "SELECT * FROM bath_test WHERE ended_at IS NULL AND " + ON_SHELF, this::read, key(letter));
  }

  /** The open test of film that was begun last. */
  public Optional<Trial> openOfFilm() {
    return session.first(
        "SELECT * FROM bath_test WHERE ended_at IS NULL AND bottle_id IS NULL ORDER BY id DESC",
        this::read);
  }

  /** Every test that still runs, the first begun in front. */
  public List<Trial> open() {
    return session.list("SELECT * FROM bath_test WHERE ended_at IS NULL ORDER BY id", this::read);
  }

  /** The last tests of the bottle of that letter on the shelf that are over, the newest first. */
  public List<Trial> overOf(String letter, int most) {
    return session.list(
        "SELECT * FROM bath_test WHERE ended_at IS NOT NULL AND "
            + ON_SHELF
            + " ORDER BY id DESC LIMIT ?",
        this::read,
        key(letter),
        most);
  }

  /** The last tests of film that are over, the newest first. */
  public List<Trial> overOfFilm(int most) {
    return session.list(
        "SELECT * FROM bath_test WHERE ended_at IS NOT NULL AND bottle_id IS NULL"
            + " ORDER BY id DESC LIMIT ?",
        this::read,
        most);
  }

  /** The tests of one roll's washing that are over, the newest first. */
  public List<Trial> ofRoll(String number) {
    return session.list(
        "SELECT * FROM bath_test WHERE ended_at IS NOT NULL AND id IN"
            + " (SELECT test_id FROM bath_test_roll WHERE roll = ? COLLATE NOCASE)"
            + " ORDER BY id DESC",
        this::read,
        number.strip());
  }

  /**
   * The tests of fixers that speak for or against the fixing of one roll: of each bottle it was
   * fixed in and each sort of test the first afterwards that was passed or failed, the newest
   * first. What came after a passed one says nothing of this roll any more.
   */
  public List<Trial> ofFixersSince(String roll) {
    return session.list(
        "SELECT * FROM bath_test WHERE id IN"
            + " (SELECT min(t.id) FROM bath_test t JOIN bottle_roll u ON u.bottle_id = t.bottle_id"
            + " JOIN bottle_line l ON l.id = u.line_id"
            + " WHERE u.undoes = 0 AND u.roll = ? COLLATE NOCASE AND t.ended_at >= l.happened_at"
            + " AND t.kind IN (?, ?) AND t.outcome IN ('passed', 'failed')"
            + " GROUP BY t.bottle_id, t.kind) ORDER BY id DESC",
        this::read,
        roll.strip(),
        TrialKind.CLEARING.word(),
        TrialKind.IODIDE.word());
  }

  /** Whether the bottle a test was begun on still stands on the shelf; true for one of film. */
  public boolean stillThere(long id) {
    return session
        .first(
            "SELECT 1 AS there FROM bath_test t LEFT JOIN bottle b ON b.id = t.bottle_id"
                + " WHERE t.id = ? AND (t.bottle_id IS NULL OR b.discarded = 0)",
            row -> row.whole("there"),
            id)
        .isPresent();
  }

  /** Ends an open test; false when it is over already, and then nothing is changed. */
  public boolean end(long id, TrialEnd end) {
    return session.change(
            "UPDATE bath_test SET ended_at = ?, took_ms = ?, outcome = ?, times_baseline = ?,"
                + " reason = ?, note = ? WHERE id = ? AND ended_at IS NULL",
            end.at(),
            end.took(),
            end.outcome().word(),
            OutcomeText.times(end.outcome()),
            OutcomeText.reason(end.outcome()),
            end.note(),
            id)
        == 1;
  }

  private Trial read(Row row) {
    long id = row.whole("id");
    return new Trial(
        id,
        TrialKind.parse(row.text("kind")),
        row.text("letter"),
        session.list(
            "SELECT roll FROM bath_test_roll WHERE test_id = ? ORDER BY roll",
            roll -> roll.text("roll"),
            id),
        row.maybeText("clip_film")
            .map(
                film ->
                    new ClipWish(
                        film,
                        row.text("clip_dilution"),
                        row.temperature("clip_temperature_c"),
                        row.yes("fresh"))),
        row.moment("started_at"),
        row.maybeMoment("ended_at")
            .map(
                at ->
                    new TrialEnd(
                        at, row.duration("took_ms"), OutcomeText.read(row), row.text("note"))));
  }

  private static String key(String letter) {
    return letter.strip().toUpperCase(Locale.ROOT);
  }
}
