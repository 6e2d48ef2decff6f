package org.wetside.web.page;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;

/**
 * What the layout needs to know about any page. Every page's model has one as its component {@code
 * sheet}, made by {@link Pages#sheet}.
 *
 * @param title said in the tab before the name of the program; the answer in few words
 * @param place where the page belongs; empty for a page that belongs nowhere, such as an error
 * @param theme what the person chose; empty when they left it to their system
 * @param units what temperatures and volumes are read in
 * @param demo whether everything on the page is invented
 * @param staticRoot address of the static files, changing with their content, without a final slash
 * @param said what a form that has just been kept has to say, shown once
 */
public record Sheet(
    String title,
    Optional<Place> place,
    Optional<Theme> theme,
    Units units,
    boolean demo,
    String staticRoot,
    Optional<String> said) {

  /** Address of a static file, for example {@code file("bench/bench.js")}. */
  public String file(String name) {
    return staticRoot + "/" + name;
  }

  /** The value of {@code data-theme}; null leaves the attribute out. */
  public @Nullable String themeWord() {
    return theme.map(Theme::word).orElse(null);
  }

  /** A temperature in the person's units, for templates. */
  public String degrees(double celsius) {
    return units.words(Temperature.ofCelsius(celsius));
  }

  /** A volume in the person's units, for templates. */
  public String volume(double millilitres) {
    return units.words(Volume.ofMillilitres(millilitres));
  }

  /** The chosen scale as the Bench's script and the form under Equipment name it. */
  public String scaleWord() {
    return UnitsCookie.word(units.scale());
  }

  /** The chosen measure, likewise. */
  public String measureWord() {
    return UnitsCookie.word(units.measure());
  }

  /** What stands behind a temperature. */
  public String degreeSign() {
    return units.scale().sign();
  }

  /** What stands behind a volume. */
  public String volumeSign() {
    return units.measure().sign();
  }

  /** Whether the page belongs to that place. */
  public boolean isAt(Place other) {
    return place.filter(other::equals).isPresent();
  }
}
