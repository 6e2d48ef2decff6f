package org.wetside.app.care;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.wetside.core.process.Step;
import org.wetside.core.safety.Objection;
import org.wetside.reference.Cautions;
import org.wetside.store.Database;
import org.wetside.store.Session;

/** The cautions for each bath that is poured, and what speaks against their order. */
public final class CareForSteps {
  private final Supplier<Database> database;

  /** In this home. */
  public CareForSteps(Supplier<Database> database) {
    this.database = database;
  }

  /**
   * What is said of each bath.
   *
   * @param steps in order, each with the letter of its bottle
   * @param developer name of the developer, for steps whose bottle is not on the shelf; empty when
   *     not said
   * @return one for each step that takes a liquid from a bottle: none for plain water and for light
   */
  public List<BathCare> of(List<Step> steps, String developer) {
    return database.get().<List<BathCare>>read(session -> in(session, steps, developer));
  }

  /** The same within a reading. */
  public static List<BathCare> in(Session session, List<Step> steps, String developer) {
    PouredBaths baths = PouredBaths.of(session, steps, developer);
    List<Objection> objections = baths.objections();
    Cautions onFile = Cautions.open();
    List<BathCare> care = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      int step = i;
      baths
          .each()
          .get(i)
          .ifPresent(
              bath ->
                  care.add(
                      new BathCare(
                          step,
                          bath.name(),
                          bath.cautions(onFile),
                          objections.stream().filter(one -> one.position() == step).toList())));
    }
    return List.copyOf(care);
  }

  /**
   * What speaks against the order of the baths alone.
   *
   * @return objections, the position of each the index of the second step
   */
  public List<Objection> order(List<Step> steps, String developer) {
    return database
        .get()
        .<List<Objection>>read(session -> PouredBaths.of(session, steps, developer).objections());
  }
}
