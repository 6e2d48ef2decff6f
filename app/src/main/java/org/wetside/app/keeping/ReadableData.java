package org.wetside.app.keeping;

import java.util.List;
import java.util.function.Supplier;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollState;
import org.wetside.core.thermal.Thermometer;
import org.wetside.store.Loads;
import org.wetside.store.OwnMeasures;
import org.wetside.store.OwnTimes;
import org.wetside.store.Processes;
import org.wetside.store.Rolls;
import org.wetside.store.Screens;
import org.wetside.store.Session;
import org.wetside.store.SettingTable;
import org.wetside.store.Tanks;
import org.wetside.store.Thermometers;
import org.wetside.store.Waters;

/** Reads everything else there is, and follows every loaded roll to its load. */
final class ReadableData {
  private final Session session;
  private final List<Fault> faults;
  private int rolls;

  ReadableData(Session session, List<Fault> faults) {
    this.session = session;
    this.faults = faults;
  }

  int rolls() {
    return rolls;
  }

  void check() {
    for (RollState state : RollState.values()) {
      Reading.of(
          state.word() + " rolls", faults, () -> rolls += new Rolls(session).in(state).size());
    }
    for (LoadState state : LoadState.values()) {
      read(state.word() + " loads", () -> new Loads(session).in(state));
    }
    Reading.of("loaded rolls", faults, this::findLoads);
    read("tanks", () -> new Tanks(session).all());
    Reading.of("thermometers", faults, this::thermometers);
    read("processes", () -> new Processes(session).all());
    read("times of your own", () -> new OwnTimes(session).inUse());
    read("waters", () -> new Waters(session).all());
    read("measures", () -> new OwnMeasures(session).all());
    read("the balance", () -> new OwnMeasures(session).balance().stream().toList());
    read("screens", () -> new Screens(session).letIn());
    read("settings", () -> new SettingTable(session).all().entrySet());
  }

  /** A roll that is loaded but in no load would never be seen again. */
  private void findLoads() {
    for (Roll roll : new Rolls(session).in(RollState.LOADED)) {
      long open =
          new Loads(session).of(roll.number()).stream().filter(ReadableData::isOpen).count();
      if (open != 1) {
        faults.add(
            new Fault(
                "roll " + roll.number(),
                "it is loaded, but in "
                    + (open == 0 ? "no load" : open + " loads")
                    + " that is planned or running"));
      }
    }
  }

  private static boolean isOpen(Load load) {
    return load.state() == LoadState.PLANNED || load.state() == LoadState.RUNNING;
  }

  private void thermometers() {
    for (Thermometer one : new Thermometers(session).all()) {
      read("thermometer " + one.name(), () -> new Thermometers(session).history(one.name()));
    }
  }

  private void read(String where, Supplier<? extends Iterable<?>> rows) {
    Reading.of(where, faults, () -> rows.get().forEach(row -> {}));
  }
}
