package org.wetside.web.rolls;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.drawer.RollRecord;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;

/**
 * Rolls: those found, or those just put into the drawer.
 *
 * @param rolls the rolls
 */
public record RollsView(List<RollView> rolls) {
  /** Rolls that were just put in, or found. */
  public static RollsView of(Wetside wetside, List<Roll> rolls) {
    return new RollsView(
        rolls.stream().map(roll -> RollView.of(wetside, roll, List.of(), List.of())).toList());
  }

  /**
   * What a search finds.
   *
   * @param text words; null or empty does not narrow
   * @param state word of a state; null or empty does not narrow
   */
  public static RollsView found(Wetside wetside, @Nullable String text, @Nullable String state) {
    return of(wetside, wetside.findRolls().matching(text == null ? "" : text, stateOf(state)));
  }

  /**
   * One roll with everything that was done to it.
   *
   * @throws BadValueException when there is no such roll
   */
  public static RollsView one(Wetside wetside, String number) {
    RollRecord record =
        wetside
            .readRecord()
            .of(number)
            .orElseThrow(
                () -> new BadValueException("roll", number, "there is no roll of that number"));
    return new RollsView(
        List.of(
            RollView.of(
                wetside,
                record.roll(),
                FilmTests.of(wetside, record.roll().number(), Units.METRIC),
                RunView.all(record))));
  }

  private static Optional<RollState> stateOf(@Nullable String word) {
    if (word == null || word.isBlank()) {
      return Optional.empty();
    }
    return Optional.of(
        Arrays.stream(RollState.values())
            .filter(state -> state.word().equals(word.strip()))
            .findFirst()
            .orElseThrow(
                () ->
                    new BadValueException(
                        "state of a roll",
                        word,
                        "write one of "
                            + Arrays.stream(RollState.values())
                                .map(RollState::word)
                                .collect(Collectors.joining(", ")))));
  }
}
