package org.wetside.core.learning;

import java.util.ArrayList;
import java.util.List;

/**
 * What may have made a roll differ from the one before it; each in the user's words, empty when not
 * known.
 *
 * @param water the water the developer was mixed with
 * @param thermometer the thermometer the bath was read with
 * @param batch the bottle of developer and its batch
 */
public record Used(String water, String thermometer, String batch) {
  /** What differs from an earlier roll, in words; what is not known of either does not. */
  public List<String> changedSince(Used earlier) {
    List<String> changed = new ArrayList<>();
    add(changed, "water", earlier.water, water);
    add(changed, "thermometer", earlier.thermometer, thermometer);
    add(changed, "bottle", earlier.batch, batch);
    return changed;
  }

  /** The same, with what is not known taken over from an earlier roll. */
  public Used after(Used earlier) {
    return new Used(
        water.isEmpty() ? earlier.water : water,
        thermometer.isEmpty() ? earlier.thermometer : thermometer,
        batch.isEmpty() ? earlier.batch : batch);
  }

  private static void add(List<String> changed, String what, String before, String now) {
    if (!before.isEmpty() && !now.isEmpty() && !before.equalsIgnoreCase(now)) {
      changed.add(what + ": " + now);
    }
  }
}
