package org.wetside.core.wash;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.TimeSpan;

/**
 * Washing as an exchange between two liquids: v_f in the film at C_f, and around it W = v_c + V of
 * water at C, well mixed, of which v_c stays when the tank is drained.
 *
 * <pre>
 *   pouring V of fresh water:  C := C·v_c/W                                      (1)
 *   while it stays there:      dC_f/dt = −k·(C_f − C)                            (2)
 *                              dC/dt   =  k·(v_f/W)·(C_f − C) − (Q/W)·C          (3)
 * </pre>
 *
 * with k = ln 2/t½, t½ the half-time at which film gives its fixer to clean water, and Q the water
 * that runs through. (2) and (3) are linear with constant coefficients and are solved exactly, so
 * that no step size has to be believed. Volumes and half-times: sources CH-S30, CH-S03, CH-S07.
 * Good for the order of magnitude: film is one well-mixed liquid here, and it adsorbs nothing.
 *
 * @param carried the film and its liquid
 * @param halfTime t½ at the temperature of the water, above 0
 */
public record TwoLiquids(CarriedLiquid carried, Duration halfTime) {
  public TwoLiquids {
    if (halfTime.isNegative() || halfTime.isZero()) {
      throw new BadValueException(
          "half-time of the wash", halfTime.toMillis() / 1000.0 + " s", "it must be above 0 s");
    }
  }

  /** After each of the changes of water, at the end of its dwell, from film out of that bath. */
  public List<InWash> afterEach(Concentration bath, List<WaterChange> changes) {
    List<InWash> states = new ArrayList<>();
    InWash state = InWash.straightFrom(bath);
    for (WaterChange change : changes) {
      state = after(state, change);
      states.add(state);
    }
    return states;
  }

  /**
   * The same all along, for a drawing: at the beginning, and at that many moments of each change.
   *
   * @param moments of each change, at least 1
   */
  public List<AtMoment> course(Concentration bath, List<WaterChange> changes, int moments) {
    List<AtMoment> course = new ArrayList<>();
    InWash state = InWash.straightFrom(bath);
    Duration begun = Duration.ZERO;
    course.add(new AtMoment(begun, state));
    for (WaterChange change : changes) {
      for (int i = 1; i <= moments; i++) {
        Duration into = change.dwell().multipliedBy(i).dividedBy(moments);
        WaterChange part = new WaterChange(change.water(), into, change.flow());
        course.add(new AtMoment(begun.plus(into), after(state, part)));
      }
      state = course.get(course.size() - 1).state();
      begun = begun.plus(change.dwell());
    }
    return course;
  }

  /**
   * How it stands at a moment.
   *
   * @param elapsed in water since the first was poured
   * @param state of both liquids
   */
  public record AtMoment(Duration elapsed, InWash state) {}

  /** After one change of water. */
  public InWash after(InWash before, WaterChange change) {
    double clingingMl = carried.clinging().millilitres();
    double aroundMl = clingingMl + change.water().millilitres();
    double ratePerSecond = Math.log(2) / TimeSpan.toSeconds(halfTime);
    double back = ratePerSecond * carried.absorbed().millilitres() / aroundMl;
    double away = change.flow().litresPerMinute() * 1000.0 / 60.0 / aroundMl;
    double water = before.inWater().gramsPerLitre() * clingingMl / aroundMl; // (1)
    Exchange exchange = new Exchange(ratePerSecond, back, away); // (2), (3)
    return exchange.after(
        before.inFilm().gramsPerLitre(), water, TimeSpan.toSeconds(change.dwell()));
  }
}
