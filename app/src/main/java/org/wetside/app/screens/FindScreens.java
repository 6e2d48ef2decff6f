package org.wetside.app.screens;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.store.Database;
import org.wetside.store.Screens;

/** The screens that are let in, and which of them it is that asks. */
public final class FindScreens {
  private static final Duration SEEN_TO = Duration.ofMinutes(1);

  private final Supplier<Database> database;
  private final Clock clock;

  /** Over one home. */
  public FindScreens(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** All that are let in, the one seen last first. */
  public List<Screen> all() {
    return database
        .get()
        .read(session -> new Screens(session).letIn().stream().map(FindScreens::of).toList());
  }

  /** Who shows this key. */
  public Known byKey(String key) {
    Optional<Screens.Stored> stored =
        database.get().read(session -> new Screens(session).byHash(Secret.hash(key)));
    if (stored.isEmpty()) {
      return new Known.Unknown();
    }
    Screens.Stored screen = stored.get();
    Optional<Instant> removed = screen.removedAt();
    return removed.isPresent()
        ? new Known.Removed(screen.name(), removed.get())
        : new Known.LetIn(of(screen));
  }

  /** Notes that a screen asked for something, once a minute at most. */
  public void seen(Screen screen) {
    Instant now = clock.instant();
    if (Duration.between(screen.seenAt(), now).compareTo(SEEN_TO) >= 0) {
      database.get().change(session -> new Screens(session).seen(screen.id(), now));
    }
  }

  private static Screen of(Screens.Stored stored) {
    return new Screen(stored.id(), stored.name(), stored.pairedAt(), stored.seenAt());
  }
}
