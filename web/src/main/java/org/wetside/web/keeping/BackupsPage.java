package org.wetside.web.keeping;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of backups.
 *
 * @param sheet the sheet
 * @param lines the backups, the newest first
 * @param failure why today's could not be made; empty when it could
 * @param failedAt when that was
 * @param age how long ago the newest was made; empty when there is none
 * @param folder where they are
 */
public record BackupsPage(
    Sheet sheet, List<Line> lines, String failure, String failedAt, String age, String folder) {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.UK);

  /** Keeps an unmodifiable copy. */
  public BackupsPage {
    lines = List.copyOf(lines);
  }

  /** A backup in words. */
  public record Line(String name, String why, String madeAt, String size) {}

  static BackupsPage of(Sheet sheet, BackupsView backups, Clock clock) {
    String failure = backups.failure();
    String failedAt = backups.failedAt();
    return new BackupsPage(
        sheet,
        backups.backups().stream()
            .map(
                one ->
                    new Line(
                        one.file(),
                        why(one.kind()),
                        moment(one.madeAt(), clock),
                        size(one.bytes())))
            .toList(),
        failure == null ? "" : failure,
        failedAt == null ? "" : moment(failedAt, clock),
        backups.backups().isEmpty() ? "" : age(backups.backups().get(0).madeAt(), clock),
        backups.folder());
  }

  private static String why(String kind) {
    return switch (kind) {
      case "daily" -> "every day";
      case "by-hand" -> "asked for";
      case "before-restore" -> "what was there before a backup was put back";
      default -> "what was there before a newer program";
    };
  }

  private static String moment(String at, Clock clock) {
    return MOMENT.format(Instant.parse(at).atZone(clock.getZone()));
  }

  private static String age(String at, Clock clock) {
    long minutes = Math.max(0, Duration.between(Instant.parse(at), clock.instant()).toMinutes());
    if (minutes < 2) {
      return "just now";
    }
    if (minutes < 120) {
      return minutes + " minutes ago";
    }
    return minutes < 2880 ? minutes / 60 + " hours ago" : minutes / 1440 + " days ago";
  }

  private static String size(long bytes) {
    return bytes < 1_000_000
        ? Math.round(bytes / 1000.0) + " kB"
        : String.format(Locale.ROOT, "%.1f MB", bytes / 1e6);
  }
}
