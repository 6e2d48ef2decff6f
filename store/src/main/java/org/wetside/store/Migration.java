package org.wetside.store;

import java.nio.file.Path;
import org.flywaydb.core.Flyway;
import org.sqlite.SQLiteDataSource;

/**
 * Brings a database up to {@link Schema#version()}, forward only. Loaded only when there is
 * something to migrate: it costs a start about half a second, so a new database is made without it
 * ({@link Schema#createIn}) and joins here when it is first migrated.
 */
final class Migration {
  private Migration() {}

  static void run(Path file, int found) {
    SQLiteDataSource source = new SQLiteDataSource();
    source.setUrl(Connections.url(file));
    Flyway.configure()
        .dataSource(source)
        .locations("classpath:db/migration")
        .failOnMissingLocations(true)
        .baselineOnMigrate(found > 0)
        .baselineVersion(Integer.toString(Math.max(1, found)))
        .load()
        .migrate();
  }
}
