package org.wetside.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Compares the tables and indexes of a database with those this program makes. */
final class Missing {
  private static final String NAMES =
      "SELECT type || ' ' || name FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%' ORDER BY 1";

  private static final String COLUMNS =
      "SELECT 'column ' || x.name || ' of table ' || t.name FROM sqlite_schema t,"
          + " pragma_table_info(t.name) x WHERE t.type = 'table' ORDER BY 1";

  private Missing() {}

  /** Whether it looks like a database of this program at all, of any version. */
  static boolean known(Connection connection) throws SQLException {
    return all(connection, NAMES).containsAll(List.of("table roll", "table setting"));
  }

  /** What should be there and is not; nothing is expected of an older version. */
  static List<String> from(Connection connection) throws SQLException {
    if (Schema.of(connection) != Schema.version()) {
      return List.of();
    }
    List<String> missing = new ArrayList<>();
    try (Connection whole = Connections.inMemory()) {
      Schema.createIn(whole);
      for (String sql : List.of(NAMES, COLUMNS)) {
        Set<String> expected = all(whole, sql);
        expected.removeAll(all(connection, sql));
        expected.forEach(name -> missing.add("the " + name + " is missing"));
      }
    }
    return missing;
  }

  private static Set<String> all(Connection connection, String sql) throws SQLException {
    Set<String> names = new TreeSet<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        names.add(rows.getString(1));
      }
    }
    return names;
  }
}
