package org.wetside.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Front door of the store: one SQLite file, written through one connection behind a lock and read
 * through a few others. A committed transaction is on disk. Gateways take a {@link Session} from
 * here.
 */
public final class Database implements AutoCloseable {
  private final @Nullable Connection writer;
  private final @Nullable ReadPool readers;
  private final ReentrantLock writing = new ReentrantLock();

  private Database(@Nullable Connection writer, @Nullable ReadPool readers) {
    this.writer = writer;
    this.readers = readers;
  }

  /**
   * Opens a database to read and write, makes it when there is none, and migrates an older one. The
   * caller holds the lock of the home.
   *
   * @throws StoreException when the file was written by a newer program (it is left untouched), or
   *     cannot be opened
   */
  public static Database open(Path file) {
    return open(file, () -> {});
  }

  /**
   * The same, but with something to be done before the tables of an older database are changed.
   * When that fails nothing is changed.
   */
  public static Database open(Path file, Runnable beforeMigration) {
    try {
      boolean fresh = !Files.exists(file);
      int found = fresh ? Schema.version() : versionOf(file);
      boolean older = found < Schema.version();
      if (older) {
        if (found > 0) {
          beforeMigration.run();
        }
        Migration.run(file, found);
      }
      Connection writer = Connections.toWrite(file);
      if (fresh) {
        makeTables(writer);
      } else if (older) {
        new BottleRows(new Session(writer)).refoldAll();
        Schema.mark(writer);
      }
      return new Database(writer, new ReadPool(file));
    } catch (SQLException failure) {
      throw new StoreException("opening the database " + file, failure);
    }
  }

  /**
   * All or none: a program that dies here leaves an empty database, which is migrated next time.
   */
  private static void makeTables(Connection writer) throws SQLException {
    writer.setAutoCommit(false);
    Schema.createIn(writer);
    writer.commit();
    writer.setAutoCommit(true);
  }

  /**
   * Opens a database only to read; where there is none, everything reads as empty and no file is
   * made.
   *
   * @return empty when the file is older than the program: {@link #open} brings it up to date
   * @throws StoreException as {@link #open}
   */
  public static Optional<Database> openToRead(Path file) {
    try {
      if (!Files.exists(file)) {
        Connection nothing = Connections.inMemory();
        Schema.createIn(nothing);
        return Optional.of(new Database(nothing, null));
      }
      Connection first = Connections.toRead(file);
      if (Schema.checked(Schema.of(first), file) < Schema.version()) {
        first.close();
        return Optional.empty();
      }
      return Optional.of(new Database(null, new ReadPool(file, first)));
    } catch (SQLException failure) {
      throw new StoreException("opening the database " + file, failure);
    }
  }

  /** Reads one consistent state: what was committed when the reading began. */
  public <T> T read(Function<Session, T> reading) {
    ReadPool pool = readers;
    if (pool == null) {
      return inTransaction(reading);
    }
    try {
      Connection connection = pool.take();
      try {
        return reading.apply(new Session(connection));
      } finally {
        connection.rollback();
        pool.giveBack(connection);
      }
    } catch (SQLException failure) {
      throw new StoreException("opening the database to read", failure);
    }
  }

  /**
   * Does everything or nothing. When this returns, it is on disk. Not to be nested.
   *
   * @throws StoreException when the database was opened only to read, or refuses
   */
  public <T> T inTransaction(Function<Session, T> work) {
    Connection connection = writer;
    if (connection == null) {
      throw new StoreException("the database was opened only to read");
    }
    if (writing.isHeldByCurrentThread()) {
      throw new IllegalStateException("a transaction is already open on this thread");
    }
    writing.lock();
    try {
      connection.setAutoCommit(false);
      boolean done = false;
      try {
        T result = work.apply(new Session(connection));
        connection.commit();
        done = true;
        return result;
      } finally {
        if (!done) {
          connection.rollback();
        }
        connection.setAutoCommit(true);
      }
    } catch (SQLException failure) {
      throw new StoreException("the database refused to keep a change", failure);
    } finally {
      writing.unlock();
    }
  }

  /** {@link #inTransaction} for work that has no result. */
  public void change(Consumer<Session> work) {
    boolean unused =
        inTransaction(
            session -> {
              work.accept(session);
              return true;
            });
  }

  @Override
  public void close() {
    try {
      if (readers != null) {
        readers.close();
      }
      if (writer != null) {
        writer.close();
      }
    } catch (SQLException failure) {
      throw new StoreException("closing the database", failure);
    }
  }

  private static int versionOf(Path file) throws SQLException {
    try (Connection connection = Connections.toRead(file)) {
      return Schema.checked(Schema.of(connection), file);
    }
  }
}
