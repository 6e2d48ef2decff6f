package org.wetside.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

/**
 * The row a query stands on, read by column name into the types of the trade. A method without
 * "maybe" in its name throws when the column holds nothing.
 */
public final class Row {
  private final ResultSet results;

  Row(ResultSet results) {
    this.results = results;
  }

  /** Text. */
  public String text(String column) {
    return maybeText(column).orElseThrow(() -> nothingIn(column));
  }

  /** Text, or empty where the column holds nothing. */
  public Optional<String> maybeText(String column) {
    try {
      return Optional.ofNullable(results.getString(column));
    } catch (SQLException failure) {
      throw new StoreException("reading column " + column, failure);
    }
  }

  /** A number. */
  public double number(String column) {
    return maybeNumber(column).orElseThrow(() -> nothingIn(column));
  }

  /** A number, or empty where the column holds nothing. */
  public OptionalDouble maybeNumber(String column) {
    try {
      double value = results.getDouble(column);
      return results.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    } catch (SQLException failure) {
      throw new StoreException("reading column " + column, failure);
    }
  }

  /** A whole number. */
  public long whole(String column) {
    try {
      long value = results.getLong(column);
      if (results.wasNull()) {
        throw nothingIn(column);
      }
      return value;
    } catch (SQLException failure) {
      throw new StoreException("reading column " + column, failure);
    }
  }

  /** A whole number, or empty where the column holds nothing. */
  public Optional<Long> maybeWhole(String column) {
    return maybeNumber(column).isPresent() ? Optional.of(whole(column)) : Optional.empty();
  }

  /** A yes or no, stored as 1 or 0. */
  public boolean yes(String column) {
    return whole(column) != 0;
  }

  /** A moment, stored as ISO-8601 text in UTC. */
  public Instant moment(String column) {
    return Instant.parse(text(column));
  }

  /** A moment, or empty where the column holds nothing. */
  public Optional<Instant> maybeMoment(String column) {
    return maybeText(column).map(Instant::parse);
  }

  /** A day, stored as ISO-8601 text. */
  public LocalDate day(String column) {
    return LocalDate.parse(text(column));
  }

  /** A day, or empty where the column holds nothing. */
  public Optional<LocalDate> maybeDay(String column) {
    return maybeText(column).map(LocalDate::parse);
  }

  /** A duration, stored in milliseconds. */
  public Duration duration(String column) {
    return Duration.ofMillis(whole(column));
  }

  /** A duration, or empty where the column holds nothing. */
  public Optional<Duration> maybeDuration(String column) {
    return maybeWhole(column).map(Duration::ofMillis);
  }

  /** A temperature, stored in °C. */
  public Temperature temperature(String column) {
    return Temperature.ofCelsius(number(column));
  }

  /** A temperature, or empty where the column holds nothing. */
  public Optional<Temperature> maybeTemperature(String column) {
    OptionalDouble celsius = maybeNumber(column);
    return celsius.isPresent()
        ? Optional.of(Temperature.ofCelsius(celsius.getAsDouble()))
        : Optional.empty();
  }

  /** A volume, stored in mL. */
  public Volume volume(String column) {
    return Volume.ofMillilitres(number(column));
  }

  /** A volume, or empty where the column holds nothing. */
  public Optional<Volume> maybeVolume(String column) {
    OptionalDouble millilitres = maybeNumber(column);
    return millilitres.isPresent()
        ? Optional.of(Volume.ofMillilitres(millilitres.getAsDouble()))
        : Optional.empty();
  }

  /** A mass, or empty where the column holds nothing; stored in g. */
  public Optional<Mass> maybeMass(String column) {
    OptionalDouble grams = maybeNumber(column);
    return grams.isPresent() ? Optional.of(Mass.ofGrams(grams.getAsDouble())) : Optional.empty();
  }

  /** An exposure index, or empty where the column holds nothing. */
  public Optional<ExposureIndex> maybeExposureIndex(String column) {
    OptionalDouble index = maybeNumber(column);
    return index.isPresent()
        ? Optional.of(ExposureIndex.of(index.getAsDouble()))
        : Optional.empty();
  }

  private static StoreException nothingIn(String column) {
    return new StoreException("the database holds nothing in column " + column);
  }
}
