package org.wetside.store;

import java.nio.file.Path;
import org.flywaydb.core.Flyway;
import org.sqlite.SQLiteDataSource;

/**
 * Brings a database up to {@link Schema#version()}, forward only. Loaded only when there is
 * something to migrate: it costs a start about a second.
 */
final class Migration {
  private Migration() {}

  static void run(Path file) {
    SQLiteDataSource source = new SQLiteDataSource();
    source.setUrl(Connections.url(file));
    Flyway.configure()
        .dataSource(source)
        .locations("classpath:db/migration")
        .failOnMissingLocations(true)
        .load()
        .migrate();
  }
}
