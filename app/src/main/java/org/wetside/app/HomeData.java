package org.wetside.app;

import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.wetside.app.home.Home;
import org.wetside.app.home.HomeLock;
import org.wetside.app.keeping.MakeBackup;
import org.wetside.store.Database;
import org.wetside.store.StoreException;

/** The database of a home, opened when it is first needed. */
final class HomeData implements AutoCloseable {
  private final Home home;
  private final Clock clock;
  private final boolean writes;
  private @Nullable Database database;

  /**
   * @param writes whether this process holds the home; otherwise it reads beside whoever does
   */
  HomeData(Home home, Clock clock, boolean writes) {
    this.home = home;
    this.clock = clock;
    this.writes = writes;
  }

  synchronized Database get() {
    Database open = database;
    if (open == null) {
      try {
        open = writes ? openedToWrite() : openedToRead();
      } catch (StoreException refused) {
        throw new CannotDoException(String.valueOf(refused.getMessage()), refused);
      }
      database = open;
    }
    return open;
  }

  private Database openedToWrite() {
    MakeBackup backup = new MakeBackup(home, clock);
    return Database.open(home.database(), backup::beforeUpdate);
  }

  private Database openedToRead() {
    return Database.openToRead(home.database()).orElseGet(this::broughtUpToDate);
  }

  private Database broughtUpToDate() {
    HomeLock brief = HomeLock.take(home, clock.instant());
    try {
      openedToWrite().close();
    } finally {
      brief.close();
    }
    return Database.openToRead(home.database()).orElseThrow();
  }

  @Override
  public synchronized void close() {
    if (database != null) {
      database.close();
    }
  }
}
