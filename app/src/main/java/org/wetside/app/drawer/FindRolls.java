package org.wetside.app.drawer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollState;
import org.wetside.store.Database;
import org.wetside.store.RollSearch;
import org.wetside.store.Rolls;

/** Finds rolls: by number, by state in order of age, by any word ever written of them. */
public final class FindRolls {
  private final Supplier<Database> database;

  /** In this home. */
  public FindRolls(Supplier<Database> database) {
    this.database = database;
  }

  /** One roll. */
  public Optional<Roll> byNumber(String number) {
    return database.get().read(session -> new Rolls(session).find(number));
  }

  /** Rolls in one state, the longest there first. */
  public List<Roll> in(RollState state) {
    return database.get().read(session -> new Rolls(session).in(state));
  }

  /** Rolls that have negatives, filed or not, the newest first. */
  public List<Roll> developed() {
    return database
        .get()
        .read(
            session -> {
              List<Roll> rolls = new ArrayList<>(new Rolls(session).in(RollState.FILED));
              rolls.addAll(new Rolls(session).in(RollState.PROCESSED));
              rolls.sort(
                  (one, other) ->
                      one.processedAt()
                          .orElse(one.addedAt())
                          .compareTo(other.processedAt().orElse(other.addedAt())));
              Collections.reverse(rolls);
              return rolls;
            });
  }

  /**
   * Rolls of which every word was written, best match first: film, title, note, date, developer,
   * bottle, mishap. The beginning of a word is enough.
   */
  public List<Roll> withWords(String text) {
    return database
        .get()
        .read(
            session -> {
              Rolls rolls = new Rolls(session);
              return new RollSearch(session)
                  .find(text).stream().map(rolls::find).flatMap(Optional::stream).toList();
            });
  }

  /**
   * Rolls by both; what is empty does not narrow. Without either every roll that was not withdrawn,
   * waiting first.
   */
  public List<Roll> matching(String text, Optional<RollState> state) {
    if (!text.isBlank()) {
      return withWords(text).stream()
          .filter(roll -> state.isEmpty() || roll.state() == state.get())
          .toList();
    }
    if (state.isPresent()) {
      return in(state.get());
    }
    List<Roll> all = new ArrayList<>(in(RollState.WAITING));
    all.addAll(in(RollState.LOADED));
    all.addAll(developed());
    return all;
  }

  /** Where the negatives of a roll are kept, in the owner's words; may be empty. */
  public String sleeve(String number) {
    return database.get().read(session -> new Rolls(session).sleeve(number));
  }
}
