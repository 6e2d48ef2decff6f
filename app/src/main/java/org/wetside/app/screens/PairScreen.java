package org.wetside.app.screens;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.Screens;

/** Lets a screen in that shows the code another screen has drawn. */
public final class PairScreen {
  /** The longest name of a screen, in characters. */
  public static final int LONGEST_NAME = 40;

  private static final int KEY_BITS = 256;

  private final Supplier<Database> database;
  private final Clock clock;
  private final Invitations invitations;

  /** Over one home and the codes of its running server. */
  public PairScreen(Supplier<Database> database, Clock clock, Invitations invitations) {
    this.database = database;
    this.clock = clock;
    this.invitations = invitations;
  }

  /** Makes a code that lets one screen in; one that was open ends. */
  public Invitation invite() {
    return invitations.open(clock.instant());
  }

  /** The code that can be used now. */
  public Optional<Invitation> invitation() {
    return invitations.now(clock.instant());
  }

  /**
   * Lets a screen in.
   *
   * @param code the key in the address of the drawn code, or its figures
   * @param name what its owner calls it
   * @throws BadValueException when the name is empty or too long; the code can still be used
   */
  public PairOutcome pair(String code, String name) {
    String bare = name.strip();
    if (bare.isEmpty() || bare.length() > LONGEST_NAME) {
      throw new BadValueException("name of the screen", name, "1 to 40 characters");
    }
    Instant now = clock.instant();
    Optional<PairOutcome> refusal = invitations.use(code, now);
    return refusal.orElseGet(() -> letIn(bare, now));
  }

  private PairOutcome letIn(String name, Instant now) {
    String key = Secret.ofBits(KEY_BITS);
    long id =
        database
            .get()
            .inTransaction(session -> new Screens(session).add(name, Secret.hash(key), now));
    return new PairOutcome.Paired(new Screen(id, name, now, now), key);
  }
}
