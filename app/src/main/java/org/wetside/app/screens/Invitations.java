package org.wetside.app.screens;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The codes of one running server: at most one can be used, the last few are remembered to say what
 * became of them. Kept in memory only: a server that stops has no code open.
 */
public final class Invitations {
  /** How long a code can be used. */
  public static final Duration LASTS = Duration.ofMinutes(5);

  /** How many wrong tries end a code: five among a hundred million. */
  public static final int MOST_TRIES = 5;

  private static final int KEY_BITS = 128;
  private static final int FIGURES = 8;
  private static final int REMEMBERED = 16;

  private final Deque<Past> past = new ArrayDeque<>();
  private @Nullable Invitation open;
  private int wrongTries;

  private record Past(Invitation invitation, PairOutcome answer) {}

  /** Shows a new code; one that was open ends. */
  public synchronized Invitation open(Instant now) {
    end(new PairOutcome.Expired(now));
    Invitation fresh =
        new Invitation(Secret.ofBits(KEY_BITS), Secret.ofFigures(FIGURES), now.plus(LASTS));
    open = fresh;
    wrongTries = 0;
    return fresh;
  }

  /** The code that can be used now. */
  public synchronized Optional<Invitation> now(Instant now) {
    Invitation shown = open;
    if (shown != null && !now.isBefore(shown.until())) {
      end(new PairOutcome.Expired(shown.until()));
    }
    return Optional.ofNullable(open);
  }

  /**
   * Uses a code up.
   *
   * @param code the key of the address or the figures, blanks between them allowed
   * @return empty when it is the right one, which by that is used; otherwise why not
   */
  synchronized Optional<PairOutcome> use(String code, Instant now) {
    String bare = code.replaceAll("\\s", "");
    Invitation shown = now(now).orElse(null);
    if (shown != null && isOf(shown, bare)) {
      end(new PairOutcome.Used());
      return Optional.empty();
    }
    for (Past one : past) {
      if (Secret.same(one.invitation().key(), bare)) {
        return Optional.of(one.answer());
      }
    }
    if (shown == null) {
      return Optional.of(lastOf(bare));
    }
    wrongTries++;
    if (wrongTries >= MOST_TRIES) {
      end(new PairOutcome.TooManyTries());
      return Optional.of(new PairOutcome.TooManyTries());
    }
    return Optional.of(new PairOutcome.Wrong(MOST_TRIES - wrongTries));
  }

  /** With no code open nothing can be guessed, so figures of the last one may be answered too. */
  private PairOutcome lastOf(String bare) {
    Past last = past.peekFirst();
    return last != null && Secret.same(last.invitation().figures(), bare)
        ? last.answer()
        : new PairOutcome.NoneShown();
  }

  private static boolean isOf(Invitation invitation, String code) {
    // both are compared whatever the first says: no time is saved that could be measured
    boolean key = Secret.same(invitation.key(), code);
    boolean figures = Secret.same(invitation.figures(), code);
    return key || figures;
  }

  private void end(PairOutcome answer) {
    Invitation ended = open;
    if (ended != null) {
      past.addFirst(new Past(ended, answer));
      open = null;
    }
    while (past.size() > REMEMBERED) {
      past.removeLast();
    }
  }
}
