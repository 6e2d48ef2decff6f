package org.wetside.core.process;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;

/**
 * An agitation schedule in one line, as a person writes it: {@code 30 s, then 5 s every 60 s, tap},
 * {@code film lift 10x, then 4x every 60 s}, {@code semi-stand 30 s, then 5 s}, {@code rotary 30
 * rev/min}, {@code continuous}, {@code none}. Seconds are counted with {@code s}, turns with {@code
 * x} (at 1.5 s each, or {@code 10x in 20 s}); inversion is meant when nothing else is said.
 */
public final class AgitationText {
  private static final String EXAMPLE =
      "write it like 30 s, then 5 s every 60 s, tap; or 10x for turns; or continuous,"
          + " rotary 30 rev/min, stand 30 s, semi-stand 30 s, then 5 s, or none";
  private static final Pattern TURNS = Pattern.compile("(\\d{1,3})\\s*[x×](?:\\s*in\\s+(.+))?");
  private static final Pattern SPEED =
      Pattern.compile("(\\d{1,3}(?:\\.\\d+)?)\\s*(?:rev/min|rpm)?");
  private static final Duration SHORTEST_BOUT = Duration.ofMillis(500);
  private static final Duration SHORTEST_INTERVAL = Duration.ofSeconds(5);
  private static final Duration LONGEST_INTERVAL = Duration.ofHours(24);

  private AgitationText() {}

  /** The line; reads back by {@link #parse}. */
  public static String of(AgitationSchedule schedule) {
    StringBuilder line = new StringBuilder();
    if (schedule.manner() != Manner.INVERSION || schedule.initial().isEmpty()) {
      line.append(schedule.manner().word());
    }
    if (schedule.revolutionsPerMinute() > 0) {
      String speed = Double.toString(schedule.revolutionsPerMinute());
      line.append(' ')
          .append(speed.endsWith(".0") ? speed.substring(0, speed.length() - 2) : speed)
          .append(" rev/min");
    }
    schedule.initial().ifPresent(bout -> line.append(' ').append(bout(bout)));
    if (schedule.cycle().isPresent()) {
      boolean bare = schedule.initial().isEmpty() && !schedule.interval().isZero();
      line.append(schedule.initial().isPresent() ? ", then " : bare ? " " : " then ");
      line.append(bout(schedule.cycle().get()));
      if (!schedule.interval().isZero()) {
        line.append(" every ").append(Words.seconds(schedule.interval()));
      }
    }
    return line.append(schedule.tap() ? ", tap" : "").toString().strip();
  }

  /**
   * Reads such a line.
   *
   * @throws BadValueException when it cannot be read, or says what its manner does not have
   */
  public static AgitationSchedule parse(String text) {
    String rest = text.strip().toLowerCase(Locale.ROOT);
    boolean tap = rest.endsWith(", tap") || rest.endsWith(",tap");
    if (tap) {
      rest = rest.substring(0, rest.lastIndexOf(',')).strip();
    }
    Manner manner = Manner.INVERSION;
    for (Manner one : Manner.values()) {
      if (rest.equals(one.word()) || rest.startsWith(one.word() + " ")) {
        manner = one;
        rest = rest.substring(one.word().length()).strip();
        break;
      }
    }
    return switch (manner) {
      case NONE, CONTINUOUS -> withoutBouts(text, manner, rest, tap);
      case ROTARY -> rotary(text, rest, tap);
      default -> withBouts(text, manner, rest, tap);
    };
  }

  private static AgitationSchedule withoutBouts(
      String text, Manner manner, String rest, boolean tap) {
    if (!rest.isEmpty() || tap) {
      throw refused(text, manner.word() + " stands alone");
    }
    return manner == Manner.NONE ? AgitationSchedule.none() : AgitationSchedule.continuous();
  }

  private static AgitationSchedule rotary(String text, String rest, boolean tap) {
    Matcher speed = SPEED.matcher(rest);
    if (tap || !speed.matches()) {
      throw refused(text, "say the speed, for example rotary 30 rev/min");
    }
    return AgitationSchedule.rotary(Double.parseDouble(speed.group(1)));
  }

  private static AgitationSchedule withBouts(String text, Manner manner, String rest, boolean tap) {
    // "beginning, then cycle every interval": either half may be missing
    int comma = rest.indexOf(',');
    String last = rest.substring(comma + 1).strip();
    boolean cycles = comma >= 0 || last.startsWith("then ") || last.contains(" every ");
    String before = cycles ? rest.substring(0, Math.max(0, comma)).strip() : last;
    String after = cycles ? last.replaceFirst("^then ", "") : "";
    int at = after.indexOf(" every ");
    Optional<Duration> every =
        at < 0 ? Optional.empty() : Optional.of(interval(after.substring(at + 7).strip()));
    Optional<Cycle> initial = bout(text, before);
    Optional<Cycle> cycle = bout(text, at < 0 ? after : after.substring(0, at));
    boolean repeats = manner == Manner.INVERSION || manner == Manner.FILM_LIFT;
    if (repeats && cycle.isPresent() && every.isEmpty()) {
      throw refused(text, "say how often, for example 5 s every 60 s");
    }
    if (!repeats && every.isPresent()) {
      throw refused(text, manner.word() + " has no interval");
    }
    if (manner == Manner.STAND && cycle.isPresent()) {
      throw refused(text, "stand is moved once; semi-stand once more half way");
    }
    return new AgitationSchedule(manner, initial, every.orElse(Duration.ZERO), cycle, tap, 0);
  }

  private static Duration interval(String text) {
    Duration interval = TimeSpan.parse("agitation interval", text);
    if (interval.compareTo(SHORTEST_INTERVAL) < 0 || interval.compareTo(LONGEST_INTERVAL) > 0) {
      throw new BadValueException("agitation interval", text, "between 5 s and 24 h");
    }
    return interval;
  }

  private static Optional<Cycle> bout(String text, String bout) {
    if (bout.isBlank()) {
      return Optional.empty();
    }
    Matcher turns = TURNS.matcher(bout.strip());
    if (!turns.matches()) {
      if (bout.contains(",") || bout.matches(".*[a-z]{4,}.*")) {
        throw refused(text, EXAMPLE);
      }
      return Optional.of(Cycle.ofLength(atLeast(TimeSpan.parse("agitation", bout))));
    }
    int count = Integer.parseInt(turns.group(1));
    return Optional.of(
        turns.group(2) == null || count == 0
            ? Cycle.ofInversions(count, Cycle.PACE)
            : new Cycle(count, atLeast(TimeSpan.parse("agitation", turns.group(2))), true));
  }

  private static Duration atLeast(Duration length) {
    if (length.compareTo(SHORTEST_BOUT) < 0) {
      throw new BadValueException("agitation", Words.seconds(length), "at least 0.5 s");
    }
    return length;
  }

  /** {@code 30 s}, {@code 10x}, or {@code 10x in 20 s} at another pace. */
  private static String bout(Cycle cycle) {
    if (!cycle.counted()) {
      return Words.seconds(cycle.length());
    }
    boolean usual = cycle.length().equals(Cycle.PACE.multipliedBy(cycle.count()));
    return cycle.count() + "x" + (usual ? "" : " in " + Words.seconds(cycle.length()));
  }

  private static BadValueException refused(String text, String limit) {
    return new BadValueException("agitation", text, limit);
  }
}
