package org.wetside.reference;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.development.Agitation;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/** Lines of printed tables as entries: one for each temperature and each tank. */
final class PrintedTimes {
  private PrintedTimes() {}

  static List<TimeEntry> read(String name) {
    List<TimeEntry> entries = new ArrayList<>();
    Map<String, Dilution> dilutions = new HashMap<>();
    for (CsvText.Line row : CsvText.read(name).lines()) {
      add(row, dilutions.computeIfAbsent(row.cell("dilution"), Dilution::parse), entries);
    }
    return entries;
  }

  private static void add(CsvText.Line row, Dilution dilution, List<TimeEntry> entries) {
    String[] ids = row.cell("id").split("-", -1);
    char letter = ids[0].charAt(0);
    int number = Integer.parseInt(ids[0].substring(1));
    String[] temperatures = row.cell("temperatures").split("/", -1);
    String[] minutes = row.cell("minutes").split("/", -1);
    String[] longest = row.cell("minutes_max").split("/", -1);
    if (temperatures.length != minutes.length) {
      throw new IllegalStateException(row.file() + ".csv: minutes and temperatures differ: " + row);
    }
    String index = row.cell("ei");
    Optional<ExposureIndex> exposureIndex =
        index.isEmpty()
            ? Optional.empty()
            : Optional.of(ExposureIndex.of(Double.parseDouble(index)));
    Citation citation = new Citation(row.cell("source"), row.cell("locator"));
    FilmFormat format = FilmFormat.parse(row.cell("format"));
    Standing standing = Standing.fromWord(row.cell("standing"));
    boolean fahrenheit = row.cell("temperature_unit").equals("F");
    for (String word : row.cell("vessel").split("/", -1)) {
      Vessel vessel = word.equals("machine") ? Vessel.MACHINE : Vessel.parse(word);
      for (int i = 0; i < temperatures.length; i++) {
        double degrees = Double.parseDouble(temperatures[i]);
        entries.add(
            new TimeEntry(
                letter + threeDigits(number + i),
                row.cell("film"),
                format,
                row.cell("developer"),
                dilution,
                row.cell("printed_dilution"),
                exposureIndex,
                Optional.of(
                    fahrenheit
                        ? Temperature.ofFahrenheit(degrees)
                        : Temperature.ofCelsius(degrees)),
                temperatures[i] + (fahrenheit ? " °F" : " °C"),
                minutes(minutes[i]),
                i < longest.length && !longest[i].isEmpty()
                    ? Optional.of(minutes(longest[i]))
                    : Optional.empty(),
                vessel,
                Agitation.parse(row.cell("agitation")),
                row.cell("contrast"),
                citation,
                standing,
                row.cell("transcribed").equals("yes"),
                row.cell("note")));
      }
    }
  }

  private static String threeDigits(int number) {
    String digits = Integer.toString(number);
    return "000".substring(Math.min(3, digits.length())) + digits;
  }

  private static Duration minutes(String cell) {
    return TimeSpan.ofSeconds(Double.parseDouble(cell) * 60);
  }
}
