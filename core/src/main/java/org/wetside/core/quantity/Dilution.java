package org.wetside.core.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a working solution is made from what is in the bottle: {@link Stock}, {@link DilutionRatio},
 * {@link Lettered} or {@link Unknown}. Two dilutions are the same when they give the same strength,
 * see {@link #matches}.
 */
public sealed interface Dilution
    permits Dilution.Stock, DilutionRatio, Dilution.Lettered, Dilution.Unknown {
  /** Used undiluted. */
  static Dilution stock() {
    return new Stock();
  }

  /** Not stated; never matches a question. */
  static Dilution notStated() {
    return new Unknown();
  }

  /** Parts of concentrate and water, when they are known; stock is 1+0. */
  Optional<DilutionRatio> ratio();

  /**
   * The trade's way of writing it: {@code stock}, {@code 1+31}, {@code B}, {@code not stated}.
   * Reads back by {@link #parse}.
   */
  String label();

  /**
   * Whether the two give the same working strength: equal ratios, or the same letter. Unknown
   * matches nothing.
   */
  default boolean matches(Dilution other) {
    if (this instanceof Unknown || other instanceof Unknown) {
      return false;
    }
    Optional<DilutionRatio> mine = ratio();
    Optional<DilutionRatio> theirs = other.ratio();
    if (mine.isPresent() && theirs.isPresent()) {
      return Math.abs(mine.get().waterPerConcentrate() - theirs.get().waterPerConcentrate()) < 1e-9;
    }
    return label().equalsIgnoreCase(other.label());
  }

  /**
   * Reads {@code stock}, {@code 1+31}, {@code B}, {@code B (1+31)} and {@code not stated}.
   *
   * @throws BadValueException for {@code 1:31}, with the question which of the two readings is
   *     meant, and for anything else
   */
  static Dilution parse(String text) {
    String bare = text.strip();
    if (bare.isEmpty() || bare.equalsIgnoreCase("not stated")) {
      return notStated();
    }
    if (bare.equalsIgnoreCase("stock") || bare.equalsIgnoreCase("undiluted")) {
      return stock();
    }
    Matcher lettered = Lettered.FORM.matcher(bare);
    if (lettered.matches()) {
      String ratio = lettered.group(2);
      return new Lettered(
          lettered.group(1).toUpperCase(java.util.Locale.ROOT),
          ratio == null ? Optional.empty() : Optional.of(DilutionRatio.parse(ratio)));
    }
    return DilutionRatio.parse(bare);
  }

  /** Used undiluted. */
  record Stock() implements Dilution {
    @Override
    public Optional<DilutionRatio> ratio() {
      return Optional.of(DilutionRatio.ofParts(1, 0));
    }

    @Override
    public String label() {
      return "stock";
    }
  }

  /**
   * A dilution the maker gives a letter.
   *
   * @param letter one capital letter
   * @param ratio its parts, when the maker prints them
   */
  record Lettered(String letter, Optional<DilutionRatio> ratio) implements Dilution {
    private static final Pattern FORM =
        Pattern.compile("([A-Za-z])(?:\\s*\\(?\\s*(\\d[^)]*?)\\s*\\)?)?");

    @Override
    public String label() {
      return ratio.map(parts -> letter + " (" + parts.label() + ")").orElse(letter);
    }
  }

  /** Not stated in the source. */
  record Unknown() implements Dilution {
    @Override
    public Optional<DilutionRatio> ratio() {
      return Optional.empty();
    }

    @Override
    public String label() {
      return "not stated";
    }
  }
}
