package org.wetside.web.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.plan.Load;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.web.process.OrderWarningView;

/**
 * A load over HTTP and on the command line.
 *
 * @param load its number
 * @param state planned, running, done or dissolved
 * @param rolls numbers of its rolls, from the bottom of the tank
 * @param tank name of the tank
 * @param process short name of the process
 * @param developer name
 * @param dilution as it is written on a bottle
 * @param temperatureC of the developer
 * @param seconds development time
 * @param standing how that time is known
 * @param source where it stands
 * @param bandSeconds nine in ten lie between these two; null when not known
 * @param volumeMl what is poured into the tank
 * @param bottles letter of the bottle by bath
 * @param run its run; null before it was brought to the Bench
 * @param note may be empty
 * @param warnings baths of its process that should not follow one another as they are
 */
public record LoadView(
    long load,
    String state,
    List<String> rolls,
    String tank,
    String process,
    String developer,
    String dilution,
    double temperatureC,
    double seconds,
    String standing,
    String source,
    @Nullable List<Double> bandSeconds,
    double volumeMl,
    Map<String, String> bottles,
    @Nullable Long run,
    String note,
    List<OrderWarningView> warnings) {

  /** The view of a load, of the run it has, and of what speaks against the order of its baths. */
  public static LoadView of(Wetside wetside, Load load) {
    Map<String, String> bottles = new LinkedHashMap<>();
    load.bottles().forEach((bath, letter) -> bottles.put(bath.word(), letter));
    return new LoadView(
        load.id(),
        load.state().word(),
        load.numbers(),
        load.tank(),
        load.process(),
        load.recipe().developer(),
        load.recipe().dilution().label(),
        load.recipe().temperature().celsius(),
        TimeSpan.toSeconds(load.time().time()),
        load.time().standing().word(),
        load.time().source(),
        load.time()
            .band()
            .map(
                band ->
                    List.of(
                        Math.round(TimeSpan.toSeconds(band.low()) * 10) / 10.0,
                        Math.round(TimeSpan.toSeconds(band.high()) * 10) / 10.0))
            .orElse(null),
        load.fill().millilitres(),
        bottles,
        wetside.listLoads().runOf(load.id()).orElse(null),
        load.note(),
        wetside.checkOrder().of(load).stream().map(OrderWarningView::of).toList());
  }
}
