package org.wetside.app.plan;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Recipe;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * A load as a person wants it.
 *
 * @param rolls numbers in their order in the tank, from the bottom; at least one, none twice
 * @param tank name of the tank
 * @param process short name of the process
 * @param recipe developer, dilution, temperature
 * @param time the person's own time; empty to take the one that is found
 * @param fill liquid in the tank; empty for the smallest that will do
 * @param bottles letter of the bottle for each bath, where one was chosen
 * @param startsAt when the first pour is meant to be; empty when not said
 * @param note anything else; may be empty, at most 200 characters
 */
public record LoadWish(
    List<String> rolls,
    String tank,
    String process,
    Recipe recipe,
    Optional<ChosenTime> time,
    Optional<Volume> fill,
    Map<BathKind, String> bottles,
    Optional<Instant> startsAt,
    String note) {
  private static final int LONGEST_NOTE = 200;

  public LoadWish {
    rolls = rolls.stream().map(String::strip).filter(number -> !number.isEmpty()).toList();
    bottles = Map.copyOf(bottles);
    if (rolls.isEmpty()) {
      throw new BadValueException("rolls", "none", "choose at least one roll that waits");
    }
    if (rolls.stream().map(String::toLowerCase).distinct().count() < rolls.size()) {
      throw new BadValueException("rolls", String.join(", ", rolls), "each roll once");
    }
    if (note.length() > LONGEST_NOTE) {
      throw new BadValueException(
          "note", note.substring(0, 20) + "…", "at most " + LONGEST_NOTE + " characters");
    }
  }
}
