package org.wetside.web.paper;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wetside.app.times.TimeWords;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;

/** The figures of a run sheet as they are printed: on the reader's clock, in the reader's units. */
public final class SheetWords {
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);
  private static final DateTimeFormatter WITHIN = DateTimeFormatter.ofPattern("mm:ss", Locale.UK);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.UK);

  private final SheetView sheet;
  private final Units units;
  private final ZoneId zone;

  /** For that sheet. */
  public SheetWords(SheetView sheet, Units units) {
    this.sheet = sheet;
    this.units = units;
    zone = ZoneId.of(sheet.zone());
  }

  /** What the paper is: {@code Run sheet, run 7}. */
  public String kind() {
    return "Run sheet, " + (sheet.run() == null ? "load " + sheet.load() : "run " + sheet.run());
  }

  /** What is in which tank. */
  public String title() {
    List<String> numbers = sheet.rolls().stream().map(SheetView.SheetRoll::number).toList();
    String last = numbers.get(numbers.size() - 1);
    String all =
        numbers.size() == 1
            ? last
            : String.join(", ", numbers.subList(0, numbers.size() - 1)) + " and " + last;
    return all + " in " + sheet.tank();
  }

  /** Film, developer, time: {@code TRI-X 400 at 400, D-76 1+1, 20 °C, 9:45}. */
  public String recipe() {
    String films =
        sheet.rolls().stream()
            .map(SheetView.SheetRoll::film)
            .distinct()
            .collect(Collectors.joining("; "));
    Double celsius = sheet.temperatureC();
    return films
        + ", "
        + sheet.developer()
        + " "
        + sheet.dilution()
        + (celsius == null ? "" : ", " + units.words(Temperature.ofCelsius(celsius)))
        + ", "
        + TimeWords.clock(TimeSpan.ofSeconds(sheet.developmentSeconds()));
  }

  /** The day of the first pour. */
  public String day() {
    return DAY.format(Instant.parse(sheet.startAt()).atZone(zone));
  }

  /** Hours, minutes and seconds. */
  public String clock(String at) {
    return SECOND.format(Instant.parse(at).atZone(zone));
  }

  /** Hours and minutes. */
  public String minute(String at) {
    return MINUTE.format(Instant.parse(at).atZone(zone));
  }

  /** Minutes and seconds of the hour, for ticks close together. */
  public String within(String at) {
    return WITHIN.format(Instant.parse(at).atZone(zone));
  }

  /** From the first pour. */
  public String fromStart(String at) {
    return TimeWords.clock(Duration.between(Instant.parse(sheet.startAt()), Instant.parse(at)));
  }

  /** What the clock times are good for. */
  public String clockNote() {
    return sheet.startKnown()
        ? "As it stood at " + minute(sheet.printedAt()) + "; what happened after that is not in it."
        : "The clock holds for that first pour; after another one go by the column from start.";
  }

  /** How long, for example {@code 10 s}, {@code 2:00}. */
  static String length(double seconds) {
    return seconds < 60 ? Math.round(seconds) + " s" : TimeWords.clock(TimeSpan.ofSeconds(seconds));
  }

  /** What is poured of it, or nothing. */
  public String volume(SheetView.SheetBath bath) {
    return volume(bath.volumeMl());
  }

  /** The temperatures a bath may have, or that nobody said. */
  public String band(@Nullable Double low, @Nullable Double high) {
    return low == null || high == null
        ? "any"
        : units.words(
            new TemperatureRange(Temperature.ofCelsius(low), Temperature.ofCelsius(high)));
  }

  /** What a bath is made of and where it goes. */
  public String made(SheetView.SheetBath bath) {
    Double concentrate = bath.concentrateMl();
    Double all = bath.volumeMl();
    String mix =
        concentrate == null || all == null
            ? ""
            : ": " + volume(concentrate) + " and " + volume(all - concentrate) + " water";
    return bath.word() + mix + ", " + afterUse(bath.afterUse());
  }

  /** Which cautions are about that bath, by their numbers from 1. */
  public String care(SheetView.SheetBath bath) {
    List<String> numbers = new ArrayList<>();
    for (int i = 0; i < sheet.care().size(); i++) {
      if (sheet.care().get(i).baths().contains(bath.word().toLowerCase(Locale.ROOT))) {
        numbers.add(String.valueOf(i + 1));
      }
    }
    return numbers.isEmpty() ? "" : "care " + String.join(" ", numbers);
  }

  /** Where a liquid goes, in fewer words. */
  static String afterUse(String words) {
    return words.equals("discard") ? "throw away" : words.replace("bottle ", "");
  }

  /** Below everything. */
  public String foot() {
    return "Development "
        + TimeWords.clock(TimeSpan.ofSeconds(sheet.developmentSeconds()))
        + " "
        + sheet.standing()
        + (sheet.source().isEmpty() ? "" : ", " + sheet.source())
        + ". "
        + sheet.process()
        + ". A developer cannot be paused: if something goes wrong, write down the moment and go on. "
        + (sheet.demo() ? "Demo: everything on this sheet is invented. " : "")
        + "Printed "
        + minute(sheet.printedAt())
        + ".";
  }

  private String volume(@Nullable Double millilitres) {
    return millilitres == null ? "" : units.words(Volume.ofMillilitres(millilitres));
  }
}
