package org.wetside.app.shelf;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.PostedLine;
import org.wetside.core.shelf.Replenishing;
import org.wetside.core.shelf.ReuseTable;
import org.wetside.core.source.Standing;
import org.wetside.reference.BathReuse;
import org.wetside.reference.Capacities;
import org.wetside.reference.Replenishers;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Session;

/** How a developer that is used again is replenished, or takes longer roll by roll. */
public final class CareForBath {
  /**
   * A rate of replenishing.
   *
   * @param perRoll for one roll of 80 in²
   * @param source where it stands
   * @param standing how it is known
   */
  public record Rate(Volume perRoll, String source, Standing standing) {}

  /**
   * What a table says of the next roll.
   *
   * @param table the maker's table
   * @param answer its time, or its end
   */
  public record NextRoll(ReuseTable table, ReuseTable.Answer answer) {}

  /**
   * How to care for it.
   *
   * @param letter its bottle
   * @param rate how much replenisher; empty when none is on file and none was said
   * @param plan the parts; empty with the rate
   * @param mostAtOnce the most that is added at once
   * @param mostAtOnceSource where that stands
   * @param tables makers' tables for reusing it without replenisher
   */
  public record Answer(
      String letter,
      Optional<Rate> rate,
      Optional<Replenishing> plan,
      Volume mostAtOnce,
      String mostAtOnceSource,
      List<NextRoll> tables) {}

  private static final int LINES_AT_ONCE = 200;

  private final Database database;

  /** Over one home's database. */
  public CareForBath(Database database) {
    this.database = database;
  }

  /** Whether a bottle is replenished or has times by roll number: a developer used again. */
  public static boolean concerns(Bottle bottle) {
    return bottle.label().bath() == BathKind.DEVELOPER
        && !bottle.label().oneShot()
        && !bottle.discarded()
        && (bottle.label().role() == BottleRole.STOCK
            || bottle.label().role() == BottleRole.WORKING);
  }

  /** Film that is to be replenished for when nobody says: what went through since, else a roll. */
  public UnitOfUse usualFilm(String letter) {
    UnitOfUse since = filmSince(letter);
    return since.rolls() > 0 ? since : UnitOfUse.ONE_ROLL;
  }

  /**
   * For so much film.
   *
   * @param film film since it was replenished last
   * @param perRoll the leaflet's rate; empty takes the one on file
   * @throws BadValueException when no bottle of that letter stands on the shelf
   */
  public Answer of(String letter, UnitOfUse film, Optional<Volume> perRoll) {
    return database.read(session -> of(session, letter, film, perRoll));
  }

  private static Answer of(
      Session session, String letter, UnitOfUse film, Optional<Volume> perRoll) {
    Bottle bottle =
        new Bottles(session)
            .find(letter)
            .orElseThrow(() -> new BadValueException("bottle", letter, "none stands on the shelf"));
    Volume mark = bottle.label().full();
    double most = Capacities.mostAtOnce();
    Optional<Rate> rate =
        perRoll
            .map(said -> new Rate(said, "as you said", Standing.MEASURED))
            .or(() -> onFile(bottle.label().contents()));
    Volume level = bottle.left().compareTo(mark) > 0 ? mark : bottle.left();
    List<NextRoll> tables =
        BathReuse.of(bottle.label().contents()).stream()
            .map(table -> new NextRoll(table, table.next(bottle.state().load(), inUse(bottle))))
            .toList();
    return new Answer(
        bottle.label().letter(),
        rate,
        rate.map(known -> Replenishing.of(mark, level, known.perRoll(), film, most)),
        mark.times(most),
        Capacities.mostAtOnceSource(),
        tables);
  }

  /**
   * Film that went through it since it was filled or replenished last, by its ledger; nothing when
   * there is no such bottle.
   */
  public UnitOfUse filmSince(String letter) {
    return database.read(
        session -> {
          Bottles bottles = new Bottles(session);
          Optional<Bottle> bottle = bottles.findLast(letter);
          if (bottle.filter(one -> one.state().replenished().millilitres() > 0).isEmpty()) {
            return bottle.map(Bottle::film).orElse(UnitOfUse.NONE);
          }
          double rolls = 0;
          long before = Long.MAX_VALUE;
          List<PostedLine> part = bottles.page(letter, before, LINES_AT_ONCE);
          while (!part.isEmpty()) {
            for (PostedLine line : part) {
              BottleEvent what = line.line().what();
              if (what instanceof BottleEvent.ToppedUp || what instanceof BottleEvent.Filled) {
                return UnitOfUse.ofRolls(Math.max(0, rolls));
              }
              rolls += through(what);
              before = line.id();
            }
            part = bottles.page(letter, before, LINES_AT_ONCE);
          }
          return UnitOfUse.ofRolls(Math.max(0, rolls));
        });
  }

  /** What its film was in: less of a developer is spent sooner than the bottle when full. */
  private static Volume inUse(Bottle bottle) {
    Volume basis = bottle.state().basis();
    return basis.millilitres() > 0 ? basis : bottle.label().full();
  }

  private static double through(BottleEvent what) {
    if (what instanceof BottleEvent.Used used) {
      return rolls(used.film());
    }
    return what instanceof BottleEvent.UseUndone undone ? -rolls(undone.film()) : 0;
  }

  private static double rolls(List<FilmUse> film) {
    return film.stream().mapToDouble(use -> use.amount().rolls()).sum();
  }

  /**
   * Parts of replenishing were done: each becomes a line of its ledger, all or none.
   *
   * @param film as in {@link #of}
   * @param perRoll likewise
   * @param done numbers of the parts, 1 the first
   * @return how many there were
   * @throws BadValueException when there is no such bottle, no such part, or nothing was done
   */
  public int replenished(
      String letter, UnitOfUse film, Optional<Volume> perRoll, Set<Integer> done, Clock clock) {
    if (done.isEmpty()) {
      throw new BadValueException("parts done", "none", "tick what was done");
    }
    database.change(
        session -> {
          List<Replenishing.Part> parts =
              of(session, letter, film, perRoll).plan().map(Replenishing::parts).orElse(List.of());
          for (int number : done) {
            if (number < 1 || number > parts.size()) {
              throw new BadValueException(
                  "part", String.valueOf(number), "there are " + parts.size() + " of them");
            }
          }
          for (int number : done) {
            Replenishing.Part part = parts.get(number - 1);
            String note = "replenished, part " + number + " of " + parts.size();
            ChangeBottle.enter(
                session, letter, note, new BottleEvent.ToppedUp(part.waste(), part.add()), clock);
          }
        });
    return done.size();
  }

  private static Optional<Rate> onFile(String developer) {
    return Replenishers.of(developer)
        .map(rate -> new Rate(rate.perRoll(), rate.citation().toString(), rate.standing()));
  }
}
