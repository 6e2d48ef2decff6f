package org.wetside.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.waste.FilledJug;
import org.wetside.core.waste.HandedIn;
import org.wetside.core.waste.Jug;
import org.wetside.core.waste.Poured;
import org.wetside.core.waste.WasteKind;

/** The jugs for waste and their book. What is in a jug is always the fold over its lines. */
public final class WasteBook {
  private static final String BETWEEN_INGREDIENTS = "\n";

  private final Session session;

  /** Works in this reading or transaction. */
  public WasteBook(Session session) {
    this.session = session;
  }

  /** Every jug, by name. */
  public List<FilledJug> all() {
    return session.list("SELECT * FROM waste_jug ORDER BY name", this::read);
  }

  /** The jug of that name, in any case. */
  public Optional<FilledJug> find(String name) {
    return session.first("SELECT * FROM waste_jug WHERE name = ?", this::read, name.strip());
  }

  /** Puts an empty jug there; its name must be free. */
  public void add(Jug jug, Instant at) {
    session.change(
        "INSERT INTO waste_jug (name, kind, holds_volume_ml, kept_at) VALUES (?, ?, ?, ?)",
        jug.name(),
        jug.kind().word(),
        jug.holds(),
        at);
  }

  /** Adds a pouring. */
  public void pour(Jug jug, Poured poured) {
    session.change(
        "INSERT INTO waste_line (jug_id, kind, happened_at, contents, bath, ingredients, bottle,"
            + " volume_ml, note) VALUES (?, 'poured', ?, ?, ?, ?, ?, ?, ?)",
        id(jug),
        poured.at(),
        poured.contents(),
        poured.bath().map(BathKind::word),
        String.join(BETWEEN_INGREDIENTS, poured.ingredients()),
        poured.bottle(),
        poured.volume(),
        poured.note());
  }

  /** Adds a handing in: the jug is empty after it. */
  public void handIn(Jug jug, HandedIn handed, Instant at) {
    session.change(
        "INSERT INTO waste_line (jug_id, kind, happened_at, volume_ml, handed_on, handed_to, note)"
            + " VALUES (?, 'handed in', ?, ?, ?, ?, ?)",
        id(jug),
        at,
        handed.volume(),
        handed.on(),
        handed.to(),
        handed.note());
  }

  /** Takes a pouring back that was not one; its line stays in the book. */
  public void takeBack(Jug jug, long line, String reason, Instant at) {
    session.change(
        "INSERT INTO waste_line (jug_id, kind, happened_at, undoes, note)"
            + " VALUES (?, 'taken back', ?, ?, ?)",
        id(jug),
        at,
        line,
        reason);
  }

  private long id(Jug jug) {
    return session
        .first("SELECT id FROM waste_jug WHERE name = ?", row -> row.whole("id"), jug.name())
        .orElseThrow(() -> new StoreException("no jug " + jug.name() + "; nothing was changed"));
  }

  private FilledJug read(Row row) {
    Jug jug =
        new Jug(
            row.text("name"), WasteKind.fromWord(row.text("kind")), row.volume("holds_volume_ml"));
    List<Poured> inside = new ArrayList<>();
    List<HandedIn> handedIn = new ArrayList<>();
    session.list(
        "SELECT * FROM waste_line WHERE jug_id = ? ORDER BY id",
        line -> fold(line, inside, handedIn),
        row.whole("id"));
    return new FilledJug(jug, inside, handedIn);
  }

  private static boolean fold(Row line, List<Poured> inside, List<HandedIn> handedIn) {
    switch (line.text("kind")) {
      case "poured" -> inside.add(poured(line));
      case "handed in" -> {
        inside.clear();
        handedIn.add(
            new HandedIn(
                line.day("handed_on"),
                line.text("handed_to"),
                line.volume("volume_ml"),
                line.text("note")));
      }
      default -> {
        long undone = line.whole("undoes");
        inside.removeIf(one -> one.line() == undone);
      }
    }
    return true;
  }

  private static Poured poured(Row line) {
    String ingredients = line.text("ingredients");
    return new Poured(
        line.whole("id"),
        line.text("contents"),
        line.maybeText("bath").map(BathKind::fromWord),
        ingredients.isEmpty() ? List.of() : List.of(ingredients.split(BETWEEN_INGREDIENTS, -1)),
        line.text("bottle"),
        Volume.ofMillilitres(line.number("volume_ml")),
        line.moment("happened_at"),
        line.text("note"));
  }
}
