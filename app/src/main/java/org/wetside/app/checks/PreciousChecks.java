package org.wetside.app.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.app.shelf.Today;
import org.wetside.core.process.StepKind;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.TestSeen;
import org.wetside.store.Bottles;
import org.wetside.store.Rolls;
import org.wetside.store.Session;

/**
 * A precious roll goes into tested baths: a leader test of what develops, a clip test of what
 * fixes.
 */
public final class PreciousChecks {
  /** Why one goes in all the same; each is one key. */
  public static final List<String> REASONS =
      List.of(
          "Tested just now, not written down", "The same baths worked tonight", "It cannot wait");

  private final Pour pour;
  private final Bottles bottles;

  PreciousChecks(Pour pour, Bottles bottles) {
    this.pour = pour;
    this.bottles = bottles;
  }

  List<Check> all(Session session) {
    Rolls rolls = new Rolls(session);
    List<String> precious =
        pour.rolls().stream()
            .filter(
                number ->
                    rolls.find(number).filter(roll -> roll.described().precious()).isPresent())
            .toList();
    List<Check> checks = new ArrayList<>();
    if (!precious.isEmpty()) {
      String who =
          String.join(", ", precious) + (precious.size() == 1 ? " is" : " are") + " precious: ";
      test(who, BathTest.LEADER, "developer", first(BathTest.LEADER), checks);
      test(who, BathTest.CLIP, "fixer", first(BathTest.CLIP), checks);
    }
    return checks;
  }

  private Optional<Integer> first(BathTest test) {
    for (int i = 0; i < pour.steps().size(); i++) {
      if (needs(pour.steps().get(i).kind(), test)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private static boolean needs(StepKind kind, BathTest test) {
    boolean both = kind == StepKind.MONOBATH;
    return test == BathTest.LEADER
        ? both || kind.developing()
        : both || kind == StepKind.FIXER || kind == StepKind.BLEACH_FIX;
  }

  private void test(
      String who, BathTest test, String bath, Optional<Integer> step, List<Check> checks) {
    if (step.isEmpty()) {
      return;
    }
    Optional<String> letter = pour.steps().get(step.get()).bottle();
    String id =
        "precious-"
            + test.word().substring(0, test.word().indexOf(' '))
            + "-"
            + letter.orElse("none");
    String of = test.word() + " of " + letter.map(one -> "bottle " + one).orElse("the " + bath);
    Optional<TestSeen> last =
        letter.flatMap(bottles::find).flatMap(bottle -> BottleTests.last(bottle, test));
    checks.add(
        new Check(
            CheckGroup.PRECIOUS,
            id,
            who + of + words(last),
            state(last),
            BottleTests.vouches(last, pour.now())
                ? ""
                : "Do it in room light and note it, or give a reason.",
            step));
  }

  private CheckState state(Optional<TestSeen> last) {
    if (BottleTests.vouches(last, pour.now())) {
      return CheckState.DONE;
    }
    return last.filter(line -> !line.passed()).isPresent() ? CheckState.WARNING : CheckState.OPEN;
  }

  private String words(Optional<TestSeen> last) {
    if (last.isEmpty()) {
      return " not noted";
    }
    String on = " on " + BottleChecks.DAY.format(Today.at(last.get().at()).today());
    if (!last.get().passed()) {
      return " failed" + on;
    }
    return " passed" + on + (BottleTests.vouches(last, pour.now()) ? "" : ", too long ago");
  }
}
