package org.wetside.app.keeping;

import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.wetside.app.bench.Alarm;

/**
 * Makes a backup every day while a server runs, and makes it anew within the hour when something
 * has changed, so that an evening's work is in it; once more when the server stops. One that fails
 * is said on the start page and in the log and tried again within the hour; it never stops anything
 * else.
 */
public final class DailyBackup implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(DailyBackup.class);

  /** The start of a server is not held up by it. */
  private static final Duration FIRST = Duration.ofSeconds(15);

  private static final Duration AGAIN = Duration.ofHours(1);

  private final MakeBackup making;
  private final Clock clock;
  private final Alarm alarm;
  private @Nullable FileTime settled;
  private boolean begun;
  private volatile @Nullable Failed failed;

  /**
   * @param making makes it
   * @param clock the wall clock
   * @param alarm wakes it
   */
  public DailyBackup(MakeBackup making, Clock clock, Alarm alarm) {
    this.making = making;
    this.clock = clock;
    this.alarm = alarm;
  }

  /**
   * A backup that was due and could not be made.
   *
   * @param at when it was tried last
   * @param reason in a sentence
   */
  public record Failed(Instant at, String reason) {}

  /** Begins to look, soon and then every hour. */
  public void begin() {
    begun = true;
    alarm.set(clock.instant().plus(FIRST), this::wake);
  }

  private void wake() {
    look();
    alarm.set(clock.instant().plus(AGAIN), this::wake);
  }

  /** Makes today's if something was written since the last look. */
  public synchronized void look() {
    FileTime written = making.lastWritten();
    if (written.equals(settled)) {
      return;
    }
    try {
      making.ofToday().ifPresent(made -> LOG.info("backed up into {}", made.file()));
      settled = written;
      failed = null;
    } catch (RuntimeException refused) {
      // Whatever it was: a run that is under way must not be disturbed by it.
      failed = new Failed(clock.instant(), String.valueOf(refused.getMessage()));
      LOG.warn("today's backup could not be made: {}", refused.getMessage(), refused);
    }
  }

  /** The failure of the last try; empty when it went well or none was due. */
  public Optional<Failed> failed() {
    return Optional.ofNullable(failed);
  }

  @Override
  public void close() {
    alarm.close();
    if (begun) {
      look();
    }
  }
}
