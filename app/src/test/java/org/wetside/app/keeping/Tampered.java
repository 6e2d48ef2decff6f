package org.wetside.app.keeping;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** Spoils a database behind the program's back. */
final class Tampered {
  private Tampered() {}

  static void with(Path file, String... changes) {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      for (String change : changes) {
        statement.execute(change);
      }
    } catch (SQLException broken) {
      throw new IllegalStateException(broken);
    }
  }

  /** The page on which a table begins. */
  static long page(Path file, String table) {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT (rootpage - 1) * 4096 FROM sqlite_schema WHERE name = '" + table + "'")) {
      return row.getLong(1);
    } catch (SQLException broken) {
      throw new IllegalStateException(broken);
    }
  }

  /** Turns every bit of so many bytes over. */
  static void flip(Path file, long at, int bytes) {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      ByteBuffer part = ByteBuffer.allocate(bytes);
      int read = channel.read(part, at);
      for (int i = 0; i < read; i++) {
        part.put(i, (byte) ~part.get(i));
      }
      part.flip();
      channel.write(part, at);
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
  }
}
