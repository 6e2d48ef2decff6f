package org.wetside.app.keeping;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetside.app.home.Home;

/**
 * The backups in the folder {@code backups} of a home. Only names that this program gives count:
 * whatever else lies there is neither shown nor touched.
 */
public final class KeptBackups {
  private static final String ENDING = ".db";
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss'Z'").withZone(ZoneOffset.UTC);

  private final Path folder;

  /** Of this home. */
  public KeptBackups(Home home) {
    folder = home.backups();
  }

  /** The folder; need not exist yet. */
  public Path folder() {
    return folder;
  }

  /** All of them, the newest first. */
  public List<KeptBackup> all() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<KeptBackup> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        if (kind(file).isPresent()) {
          all.add(
              new KeptBackup(
                  file,
                  kind(file).get(),
                  Files.getLastModifiedTime(file).toInstant(),
                  Files.size(file)));
        }
      }
    } catch (IOException failure) {
      throw new UncheckedIOException("reading the folder " + folder + ": " + failure, failure);
    }
    all.sort(Comparator.comparing(KeptBackup::madeAt).thenComparing(KeptBackup::name).reversed());
    return all;
  }

  /** The one of that file name. */
  public Optional<KeptBackup> find(String name) {
    return all().stream().filter(one -> one.name().equals(name)).findFirst();
  }

  /** The daily ones by their day, the newest first. */
  List<LocalDate> days() {
    return all().stream()
        .filter(one -> one.kind() == KeptBackup.Kind.DAILY)
        .map(one -> day(one.name()).orElseThrow())
        .sorted(Comparator.reverseOrder())
        .toList();
  }

  /** Where that day's is kept. */
  Path ofDay(LocalDate day) {
    return folder.resolve(KeptBackup.Kind.DAILY.word() + "-" + day + ENDING);
  }

  /** A free name for one made at that moment. */
  Path named(KeptBackup.Kind kind, Instant moment) {
    String name = kind.word() + "-" + MOMENT.format(moment);
    Path file = folder.resolve(name + ENDING);
    for (int i = 2; Files.exists(file); i++) {
      file = folder.resolve(name + "-" + i + ENDING);
    }
    return file;
  }

  /** Makes the folder when there is none. */
  void makeFolder() {
    try {
      Files.createDirectories(folder);
    } catch (IOException failure) {
      throw new UncheckedIOException(
          "the folder " + folder + " cannot be made: " + failure, failure);
    }
  }

  private static Optional<KeptBackup.Kind> kind(Path file) {
    String name = String.valueOf(file.getFileName());
    for (KeptBackup.Kind kind : KeptBackup.Kind.values()) {
      boolean named =
          kind == KeptBackup.Kind.DAILY
              ? day(name).isPresent()
              : name.startsWith(kind.word() + "-") && name.endsWith(ENDING);
      if (named) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  private static Optional<LocalDate> day(String name) {
    String before = KeptBackup.Kind.DAILY.word() + "-";
    if (!name.startsWith(before) || !name.endsWith(ENDING)) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          LocalDate.parse(name.substring(before.length(), name.length() - ENDING.length())));
    } catch (DateTimeParseException notADay) {
      return Optional.empty();
    }
  }
}
