package org.wetside.app;

import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import org.flywaydb.core.Flyway;

/** Knows pages, SQL and migrations, prints, and looks at the clock. */
final class BrokenUseCase {
  private BrokenUseCase() {}

  static void does(org.wetside.web.WebServer server) throws SQLException {
    System.out.println(server.address() + " " + Clock.systemUTC());
    System.out.println(DriverManager.getConnection("jdbc:sqlite::memory:"));
    System.out.println(Flyway.configure());
  }
}
