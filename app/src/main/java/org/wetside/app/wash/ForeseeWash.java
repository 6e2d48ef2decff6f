package org.wetside.app.wash;

import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.FlowRate;
import org.wetside.core.quantity.Volume;
import org.wetside.core.wash.CarriedLiquid;
import org.wetside.core.wash.WashFigures;
import org.wetside.core.wash.WashForecast;
import org.wetside.core.wash.WashMethod;
import org.wetside.core.wash.WashQuestion;
import org.wetside.core.wash.WaterChange;
import org.wetside.reference.Washes;

/** Foresees what a wash leaves on the film: by fills, by running water, or by a printed way. */
public final class ForeseeWash {
  /** The way that takes little water, and the first to be offered. */
  public static final String LOW_WATER = "changes-10";

  private static final int MOST_FILLS = 200;

  private final WashFigures figures = Washes.figures();
  private final List<WashMethod> methods = Washes.methods();

  /**
   * Fills of standing water.
   *
   * @param fills how many, 1 to 200
   * @param dwell how long each stays; empty gives the rule of fills alone
   */
  public WashAnswer fills(WashWish wish, int fills, Optional<Duration> dwell) {
    if (fills < 1 || fills > MOST_FILLS) {
      throw new BadValueException("fills", fills + "", "between 1 and " + MOST_FILLS + " fills");
    }
    if (dwell.filter(Duration::isZero).isPresent()) {
      throw new BadValueException("time in one fill", "0 s", "it must be above 0 s");
    }
    WaterChange one = WaterChange.standing(wish.fill(), dwell.orElse(Duration.ZERO));
    return answer(
        wish,
        Collections.nCopies(fills, one),
        Optional.empty(),
        /* dwellSaid= */ dwell.isPresent());
  }

  /** Water that runs through the full tank for a time, both above 0. */
  public WashAnswer running(WashWish wish, FlowRate flow, Duration time) {
    if (flow.litresPerMinute() <= 0) {
      throw new BadValueException("flow of water", flow.toString(), "it must be above 0 L/min");
    }
    if (time.isZero()) {
      throw new BadValueException("time of the wash", "0 min", "it must be above 0 min");
    }
    return answer(
        wish,
        List.of(new WaterChange(wish.fill(), time, flow)),
        Optional.empty(),
        /* dwellSaid= */ true);
  }

  /**
   * A way to wash that is on file.
   *
   * @param flow of the water where it runs; empty takes the printed one
   * @throws BadValueException when there is none of that name, or it has no running water and a
   *     flow is given
   */
  public WashAnswer method(WashWish wish, String slug, Optional<FlowRate> flow) {
    WashMethod method =
        methods.stream()
            .filter(one -> one.slug().equalsIgnoreCase(slug.strip()))
            .findFirst()
            .orElseThrow(() -> new BadValueException("way to wash", slug, "choose " + names()));
    if (flow.isPresent() && !method.runs()) {
      throw new BadValueException(
          "flow of water", flow.get().toString(), "no water runs in " + method.slug());
    }
    return answer(
        wish, method.changes(wish.fill(), flow), Optional.of(method), /* dwellSaid= */ true);
  }

  /** Every way on file for the same tank and film, the one with little water first. */
  public List<WashAnswer> all(WashWish wish) {
    return methods.stream().map(method -> method(wish, method.slug(), Optional.empty())).toList();
  }

  /** The ways on file, the one with little water first. */
  public List<WashMethod> methods() {
    return methods;
  }

  private WashAnswer answer(
      WashWish wish, List<WaterChange> changes, Optional<WashMethod> method, boolean dwellSaid) {
    Volume total =
        wish.carryOver().orElseGet(() -> figures.carriedPerRoll().times(wish.film().rolls()));
    CarriedLiquid carried = CarriedLiquid.of(wish.film(), total, figures.absorbedPerRoll());
    WashForecast forecast =
        WashForecast.of(
            new WashQuestion(carried, wish.start().orElse(figures.start()), wish.water(), changes),
            figures);
    return new WashAnswer(forecast, method, dwellSaid, wish.start().isPresent());
  }

  private String names() {
    return methods.stream()
        .map(WashMethod::slug)
        .collect(Collectors.joining(", ", "fills, running, ", ""));
  }
}
