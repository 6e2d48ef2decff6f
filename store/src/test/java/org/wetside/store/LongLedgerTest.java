package org.wetside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.ProgressHandler;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleMark;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;

/**
 * What a page asks of a long ledger costs as much as of a short one. The database's own steps are
 * counted, not the time, so that a busy machine says the same.
 */
class LongLedgerTest {
  private static final Instant NOW = Instant.parse("2026-01-10T18:00:00Z");
  private static final int SHORT = 400;
  private static final int LONG = 8_000;

  @TempDir Path folder;

  @Test
  void aPageOfABottleReadsNoMoreOfALongLedger() throws SQLException {
    same(
        session -> {
          assertThat(new Bottles(session).findLast("F")).isPresent();
          assertThat(new Bottles(session).page("F", Long.MAX_VALUE, 51)).hasSize(51);
        });
  }

  @Test
  void aPageInTheMiddleReadsNoMoreOfALongLedger() throws SQLException {
    same(session -> assertThat(new Bottles(session).page("F", SHORT / 2, 51)).hasSize(51));
  }

  @Test
  void theShelfReadsNoMoreOfALongLedger() throws SQLException {
    same(session -> assertThat(new Bottles(session).onShelf()).hasSize(1));
  }

  /** Those that are to be fixed again are found without the others. */
  @Test
  void theRecallListReadsOnlyItself() throws SQLException {
    same(
        session -> {
          assertThat(new Recalls(session).all()).hasSize(1);
          assertThat(new Recalls(session).count()).isEqualTo(1);
        });
  }

  private void same(Consumer<Session> reading) throws SQLException {
    long few = steps(SHORT, reading);
    long many = steps(LONG, reading);
    assertThat(many).as("steps for %d and for %d lines", LONG, SHORT).isLessThan(few * 5 / 4 + 50);
  }

  private long steps(int lines, Consumer<Session> reading) throws SQLException {
    Path file = folder.resolve(lines + ".db");
    try (Database database = Database.open(file)) {
      database.change(session -> fill(session, lines));
    }
    AtomicLong steps = new AtomicLong();
    try (Connection connection = Connections.toRead(file)) {
      ProgressHandler.setHandler(
          connection,
          1,
          new ProgressHandler() {
            @Override
            protected int progress() {
              steps.incrementAndGet();
              return 0;
            }
          });
      reading.accept(new Session(connection));
      ProgressHandler.clearHandler(connection);
    }
    assertThat(steps.get()).isPositive();
    return steps.get();
  }

  /** A fixer with one open mark and one roll to be fixed again, both at the very beginning. */
  private static void fill(Session session, int lines) {
    Bottles bottles = new Bottles(session);
    Volume litre = Volume.ofLitres(1);
    bottles.add(
        BottleLabel.of("F", "fixer", BottleRole.WORKING, BathKind.FIXER, litre), litre, NOW);
    new BottlesInRun(session).mark("F", BottleMark.DO_NOT_USE, "an invented mishap", "0", NOW, NOW);
    List<LedgerLine> all = new ArrayList<>();
    all.add(line("0", used(0)));
    all.add(line("", test(false)));
    for (int i = 1; all.size() < lines; i++) {
      all.add(line("", test(true)));
      all.add(line(Integer.toString(i), used(i)));
      all.add(line(Integer.toString(i), new BottleEvent.PouredBack(Volume.ofMillilitres(10))));
    }
    bottles.enterAll("F", all);
  }

  private static BottleEvent used(int i) {
    return new BottleEvent.Used(
        Volume.ofMillilitres(10),
        List.of(new FilmUse("R-" + i, "an invented film", UnitOfUse.ONE_ROLL, false)));
  }

  private static BottleEvent test(boolean passed) {
    return new BottleEvent.Tested(BathTest.CLIP, passed, Optional.empty());
  }

  private static LedgerLine line(String run, BottleEvent what) {
    return new LedgerLine(NOW, run, "", what);
  }
}
