package org.wetside.core.development;

import org.wetside.core.quantity.Stops;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;

/** Why there is no honest time; worded at the edge. */
public sealed interface Refusal
    permits Refusal.NoEntries,
        Refusal.NoStep,
        Refusal.TooUncertain,
        Refusal.TooFarToGuess,
        Refusal.OtherAgitation,
        Refusal.OutsideTemperatures {
  /** Nothing is on file for this film in this developer. */
  record NoEntries(Film film, Developer developer) implements Refusal {}

  /** What no rule leads across. */
  enum Gap {
    TEMPERATURE("temperature"),
    DILUTION("dilution"),
    EXPOSURE_INDEX("exposure index"),
    VESSEL("tank"),
    FORMAT("format"),
    CONTRAST("contrast");

    private final String word;

    Gap(String word) {
      this.word = word;
    }

    /** As said to people. */
    public String word() {
      return word;
    }
  }

  /** Entries exist, but no rule leads from them to what was asked. */
  record NoStep(Gap gap, String from, String to) implements Refusal {}

  /** The best way there is too uncertain: total against limit, both in ln(time) [-]. */
  record TooUncertain(double lnSd, double limit) implements Refusal {}

  /** More stops would rest on a guess than allowed. */
  record TooFarToGuess(Stops guessed, Stops limit) implements Refusal {}

  /** Times for one way of agitating say nothing about the other. */
  record OtherAgitation(Agitation asked, Agitation known) implements Refusal {}

  /** The temperature lies where no step is allowed. */
  record OutsideTemperatures(Temperature asked, TemperatureRange allowed) implements Refusal {}
}
