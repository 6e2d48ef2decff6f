package org.wetside.app.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.wetside.app.care.BathCare;
import org.wetside.app.plan.CheckStock;
import org.wetside.app.plan.PlanWords;
import org.wetside.core.bath.StockRequirement;
import org.wetside.core.run.Happening;
import org.wetside.core.run.PassedOver;
import org.wetside.core.source.Standing;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Loads;

/**
 * Everything that is looked at before the first pour.
 *
 * @param checks group by group, in the order in which they are gone through
 * @param closing how long the check of the closed tank is, and why
 */
public record BeforePour(List<Check> checks, Closing closing) {
  /** Nothing is asked any more: the first pour is over. */
  public static final BeforePour OVER =
      new BeforePour(List.of(), new Closing(List.of(), false, ""));

  public BeforePour {
    checks = List.copyOf(checks);
  }

  /**
   * What there is to look at before this pour.
   *
   * @param care what is said of its baths when they are handled
   */
  public static BeforePour of(Supplier<Database> database, Pour pour, List<BathCare> care) {
    Closing closing = database.get().read(session -> ClosingLength.of(session, pour));
    List<Check> checks = new ArrayList<>(closing.checks());
    checks.addAll(HandlingChecks.of(pour, care));
    checks.addAll(new TemperatureChecks(pour).all());
    database.get().read(session -> checks.addAll(new BottleChecks(pour, session).all()));
    checks.addAll(stock(database, pour));
    database
        .get()
        .read(
            session -> checks.addAll(new PreciousChecks(pour, new Bottles(session)).all(session)));
    return new BeforePour(checks, closing);
  }

  private static List<Check> stock(Supplier<Database> database, Pour pour) {
    return pour.load()
        .flatMap(load -> database.get().read(session -> new Loads(session).find(load)))
        .flatMap(new CheckStock(database)::of)
        .map(
            check ->
                List.of(
                    Check.of(
                        CheckGroup.STOCK,
                        "stock-minimum",
                        PlanWords.of(check, pour.units()),
                        state(check),
                        check.passed() ? "" : "Change the load, or enter the leaflet's minimum.")))
        .orElse(List.of());
  }

  private static CheckState state(StockRequirement check) {
    if (check instanceof StockRequirement.Enough enough) {
      return enough.minimum().standing() == Standing.FROM_MEMORY
          ? CheckState.OPEN
          : CheckState.DONE;
    }
    return check instanceof StockRequirement.TooLittle ? CheckState.WARNING : CheckState.OPEN;
  }

  /** Ids of what has to be answered, one way or the other, before the first pour is taken. */
  public List<String> mustBeAnswered() {
    return checks.stream().filter(BeforePour::isAsked).map(Check::id).toList();
  }

  private static boolean isAsked(Check check) {
    return check.group() == CheckGroup.CLOSING
        || (check.group() == CheckGroup.PRECIOUS && !check.done());
  }

  /**
   * The first pour as it goes into the record: what was left undone stands there in words. A reason
   * answers for what is precious; a question that was answered with yes passes the rest over.
   */
  public Happening.Started settled(Happening.Started said) {
    List<PassedOver> passed = new ArrayList<>();
    for (Check check : checks) {
      boolean named = said.passedOver().stream().anyMatch(one -> one.id().equals(check.id()));
      boolean excused = check.group() == CheckGroup.PRECIOUS && !said.reason().isEmpty();
      boolean leftOut = !isAsked(check) || said.confirmed() || excused;
      if (!check.done() && !said.ticked().contains(check.id()) && (named || leftOut)) {
        passed.add(new PassedOver(check.id(), check.text()));
      }
    }
    return new Happening.Started(said.ticked(), passed, said.reason(), said.confirmed());
  }

  /** The question before a pour that leaves something unanswered. */
  public String question(Happening.Started said) {
    return "Not ticked: "
        + String.join(
            "; ",
            checks.stream()
                .filter(check -> isAsked(check) && !said.answers(check.id()))
                .map(Check::text)
                .toList())
        + ". Pour all the same?";
  }
}
