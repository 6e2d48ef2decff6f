package org.wetside.app.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.app.process.FindProcess;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Roll;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.run.RollInTank;
import org.wetside.core.run.RunCard;
import org.wetside.store.Bottles;
import org.wetside.store.Rolls;
import org.wetside.store.Session;

/**
 * A load as its run is opened: all of it that goes into the record, before it is stored.
 *
 * @param card the head, without a number yet
 * @param steps the process with the load's bottles and what is known of the hands
 */
record Opening(RunCard card, LoadSteps steps) {
  static Opening of(Session session, Load load, Instant now) {
    FilmProcess process =
        FindProcess.in(session, load.process()).withDevelopment(load.time().time());
    LoadSteps steps =
        LoadSteps.of(load, process, new Bottles(session), LearnedHands.with(session, load.tank()));
    RunCard card =
        new RunCard(
            0,
            Optional.of(load.id()),
            load.note().isBlank() ? "Load " + load.id() : load.note(),
            load.tank(),
            rolls(session, load),
            process.slug(),
            process.name(),
            load.recipe().developer(),
            load.recipe().dilution(),
            Optional.of(load.recipe().temperature()),
            load.time().standing(),
            load.time().source(),
            Optional.of(load.fill()),
            now);
    return new Opening(card, steps);
  }

  private static List<RollInTank> rolls(Session session, Load load) {
    List<RollInTank> rolls = new ArrayList<>();
    int count = load.rolls().size();
    for (Load.Place place : load.rolls()) {
      Roll roll =
          new Rolls(session)
              .find(place.number())
              .orElseThrow(
                  () -> new BadValueException("roll", place.number(), "there is no such roll"));
      int position = rolls.size() + 1;
      rolls.add(
          new RollInTank(
              roll.number(),
              roll.filmAndIndex(),
              position,
              placeOf(position, count),
              roll.amount()));
    }
    return rolls;
  }

  private static String placeOf(int position, int count) {
    if (count == 1) {
      return "the only reel";
    }
    if (position == 1) {
      return "bottom reel";
    }
    return position == count ? "top reel" : "reel " + position + " from the bottom";
  }
}
