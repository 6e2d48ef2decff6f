package org.wetside.app.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.bath.BathKind;
import org.wetside.core.plan.Load;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.core.safety.Material;
import org.wetside.core.safety.Objection;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleRole;
import org.wetside.reference.CombinationRules;
import org.wetside.reference.Materials;
import org.wetside.store.Bottles;
import org.wetside.store.Database;

/**
 * Whether the baths of a process may follow one another. What a bath is comes from the bottle that
 * stands on the shelf under its letter; without one only its kind is known.
 */
public final class CheckOrder {
  private final Supplier<Database> database;

  /** In this home. */
  public CheckOrder(Supplier<Database> database) {
    this.database = database;
  }

  /** What is to be said of a process, with the bottles it names itself. */
  public List<OrderWarning> of(FilmProcess process) {
    return of(process, Map.of(), "");
  }

  /** What is to be said of a load: with its own bottles and its developer. */
  public List<OrderWarning> of(Load load) {
    FilmProcess process =
        database.get().<FilmProcess>read(session -> FindProcess.in(session, load.process()));
    return of(process, load.bottles(), load.recipe().developer());
  }

  /**
   * The same for a load that is still being thought through.
   *
   * @param bottles letter by bath, where one was chosen
   * @param developer its name; empty when not said
   */
  public List<OrderWarning> of(
      FilmProcess process, Map<BathKind, String> bottles, String developer) {
    List<Bottle> shelf = database.get().read(session -> new Bottles(session).onShelf());
    Materials materials = Materials.open();
    List<Integer> numbers = new ArrayList<>();
    List<Material> baths = new ArrayList<>();
    for (int i = 0; i < process.steps().size(); i++) {
      Step step = process.steps().get(i);
      if (step.kind().wet()) {
        numbers.add(i + 1);
        baths.add(material(materials, step, shelf, bottles, developer));
      }
    }
    List<OrderWarning> warnings = new ArrayList<>();
    for (Objection objection : CombinationRules.open().inTurn(baths)) {
      warnings.add(new OrderWarning(numbers.get(objection.position()), objection));
    }
    return List.copyOf(warnings);
  }

  private static Material material(
      Materials materials,
      Step step,
      List<Bottle> shelf,
      Map<BathKind, String> bottles,
      String developer) {
    Optional<BathKind> kind = step.kind().bath();
    if (kind.isEmpty()) {
      return Materials.water();
    }
    String word = step.kind().word();
    Optional<String> letter = Optional.ofNullable(bottles.get(kind.get())).or(step::bottle);
    Optional<Bottle> bottle =
        letter.flatMap(
            wanted ->
                shelf.stream()
                    .filter(one -> one.label().letter().equalsIgnoreCase(wanted.strip()))
                    .filter(one -> one.label().bath() == kind.get())
                    .findFirst());
    if (bottle.isPresent()) {
      String contents = bottle.get().label().contents();
      String name = word + " (bottle " + bottle.get().label().letter() + ", " + contents + ")";
      return materials.ofBath(name, contents, kind.get(), BottleRole.WORKING);
    }
    boolean told = step.kind().developing() && !developer.isEmpty();
    return materials.ofBath(
        told ? word + " (" + developer + ")" : word,
        told ? developer : word,
        kind.get(),
        BottleRole.WORKING);
  }
}
