package org.wetside.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One connection for as long as a reading or a transaction lasts: plain SQL with {@code ?} in, rows
 * out. Values may be the types that {@link Stored} lists, also inside an {@code Optional}.
 */
public final class Session {
  private final Connection connection;

  Session(Connection connection) {
    this.connection = connection;
  }

  /** Every row of a query, in its order. */
  public <T> List<T> list(String sql, Function<Row, T> read, Object... values) {
    try (PreparedStatement statement = prepared(sql, values);
        ResultSet results = statement.executeQuery()) {
      Row row = new Row(results);
      List<T> found = new ArrayList<>();
      while (results.next()) {
        found.add(read.apply(row));
      }
      return found;
    } catch (SQLException failure) {
      throw new StoreException("the database refused to read", failure);
    }
  }

  /** The first row of a query, or empty when there is none. */
  public <T> Optional<T> first(String sql, Function<Row, T> read, Object... values) {
    List<T> found = list(sql, read, values);
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
  }

  /** Changes rows and says how many. */
  public int change(String sql, Object... values) {
    try (PreparedStatement statement = prepared(sql, values)) {
      return statement.executeUpdate();
    } catch (SQLException failure) {
      throw new StoreException("the database refused to write", failure);
    }
  }

  /** Inserts one row and gives the id the database chose for it. */
  public long insert(String sql, Object... values) {
    return first(sql + " RETURNING id", row -> row.whole("id"), values).orElseThrow();
  }

  private PreparedStatement prepared(String sql, Object... values) throws SQLException {
    PreparedStatement statement = connection.prepareStatement(sql);
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, Stored.form(values[i]));
    }
    return statement;
  }
}
