package org.wetside.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.Semaphore;

/** A few read-only connections, opened when first needed and kept. */
final class ReadPool implements AutoCloseable {
  private static final int AT_MOST = 4;

  private final Path file;
  private final Semaphore free = new Semaphore(AT_MOST);
  private final ConcurrentLinkedDeque<Connection> idle = new ConcurrentLinkedDeque<>();

  ReadPool(Path file) {
    this.file = file;
  }

  /** A pool that begins with a connection that is open already. */
  ReadPool(Path file, Connection first) throws SQLException {
    this(file);
    idle.add(toTakeTurns(first));
  }

  /** Waits until a connection is free. */
  Connection take() throws SQLException {
    free.acquireUninterruptibly();
    try {
      Connection kept = idle.pollFirst();
      return kept == null ? opened() : kept;
    } catch (SQLException | RuntimeException failure) {
      free.release();
      throw failure;
    }
  }

  private Connection opened() throws SQLException {
    return toTakeTurns(Connections.toRead(file));
  }

  /** One reading sees one state: it is a transaction. */
  private static Connection toTakeTurns(Connection connection) throws SQLException {
    connection.setAutoCommit(false);
    return connection;
  }

  void giveBack(Connection connection) {
    idle.addFirst(connection);
    free.release();
  }

  /** Closes what is idle; to be called when no reading is under way. */
  @Override
  public void close() throws SQLException {
    for (Connection kept = idle.pollFirst(); kept != null; kept = idle.pollFirst()) {
      kept.close();
    }
  }
}
