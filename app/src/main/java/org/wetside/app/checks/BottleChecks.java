package org.wetside.app.checks;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.wetside.app.shelf.Today;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleMark;
import org.wetside.core.shelf.BottleNote;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FixerPair;
import org.wetside.core.shelf.MarkSeen;
import org.wetside.core.shelf.Reason;
import org.wetside.core.shelf.TestSeen;
import org.wetside.core.shelf.Verdict;
import org.wetside.core.shelf.VerdictRules;
import org.wetside.reference.Capacities;
import org.wetside.reference.KeepingTimes;
import org.wetside.store.Bottles;
import org.wetside.store.FixerPairs;
import org.wetside.store.Session;

/** Each bottle that is poured from, by what the shelf knows of it. */
final class BottleChecks {
  static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  private final Pour pour;
  private final Bottles bottles;
  private final FixerPairs pairs;

  BottleChecks(Pour pour, Session session) {
    this.pour = pour;
    bottles = new Bottles(session);
    pairs = new FixerPairs(session);
  }

  List<Check> all() {
    List<Check> checks = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (int i = 0; i < pour.steps().size(); i++) {
      Optional<String> letter = pour.steps().get(i).bottle();
      if (letter.isPresent() && seen.add(letter.get())) {
        checks.add(one(i, letter.get()));
      }
    }
    return checks;
  }

  private Check one(int step, String letter) {
    Optional<Bottle> found = bottles.find(letter);
    String id = "bottles-" + letter;
    Optional<Bottle> gone = found.isPresent() ? Optional.empty() : bottles.findLast(letter);
    if (gone.isPresent()) {
      return new Check(
          CheckGroup.BOTTLES,
          id,
          pour.bath(step) + ": discarded on " + day(gone.get().lastTouched()),
          CheckState.WARNING,
          "Take another bottle, or put a fresh one on the Shelf under this letter.",
          Optional.of(step));
    }
    if (found.isEmpty()) {
      return new Check(
          CheckGroup.BOTTLES,
          id,
          pour.bath(step) + ": not on the shelf",
          CheckState.OPEN,
          "Nothing is known of it. Put it on the Shelf, or be sure of it yourself.",
          Optional.of(step));
    }
    Findings findings = new Findings();
    look(step, found.get(), findings);
    return new Check(
        CheckGroup.BOTTLES,
        id,
        pour.bath(step)
            + ": "
            + (findings.words.isEmpty()
                ? pour.units().words(found.get().left()) + " of " + found.get().label().contents()
                : String.join("; ", findings.words)),
        findings.state,
        String.join(" ", findings.advice),
        Optional.of(step));
  }

  /** What speaks against a bottle, gathered. */
  private static final class Findings {
    private CheckState state = CheckState.DONE;
    private final List<String> words = new ArrayList<>();
    private final Set<String> advice = new LinkedHashSet<>();

    void add(CheckState how, String what, String toDo) {
      state = state.or(how);
      words.add(what);
      advice.add(toDo);
    }
  }

  private void look(int step, Bottle bottle, Findings findings) {
    BottleNote note = new BottleNote(bottle.label().note());
    StepKind kind = pour.steps().get(step).kind();
    BathTest test = testOf(kind);
    Optional<TestSeen> last = BottleTests.last(bottle, test);
    if (last.isPresent() && !last.get().passed()) {
      findings.add(
          CheckState.WARNING,
          "spent, its " + test.word() + " failed on " + day(last.get().at()),
          "Do not use it: mix fresh.");
    }
    for (MarkSeen seen : bottle.state().marks()) {
      boolean testable = seen.mark() == BottleMark.TEST_FIRST;
      findings.add(
          testable ? CheckState.OPEN : CheckState.WARNING,
          seen.mark().word() + ": " + seen.why(),
          testable ? howToTest(kind) : "Decide about it under Shelf first.");
    }
    if (note.doNotUse()) {
      findings.add(
          CheckState.WARNING, "\"do not use\" stands on it", "Decide about it under Shelf first.");
    }
    if (note.useBy().filter(day -> day.isBefore(today())).isPresent()) {
      findings.add(
          CheckState.WARNING,
          "out of date since " + DAY.format(note.useBy().get()),
          "Test it first, or mix fresh.");
    }
    if (note.testFirst() && !BottleTests.vouches(last, pour.now())) {
      findings.add(CheckState.OPEN, "test first", howToTest(kind));
    }
    lookAtVerdict(bottle, findings);
    lookAtStrength(kind, bottle, note, findings);
    pairs.of(bottle.label().letter()).ifPresent(pair -> lookAtPair(step, pair, findings));
    Optional<Volume> wanted = pour.taken().get(step);
    if (wanted.isPresent() && bottle.left().compareTo(wanted.get()) < 0) {
      findings.add(
          CheckState.WARNING,
          "holds "
              + pour.units().words(bottle.left())
              + ", "
              + pour.units().words(wanted.get())
              + " are wanted",
          "Mix more, or take another bottle.");
    }
  }

  /** Age and film; tests and what stands on the bottle are looked at for the step itself. */
  private void lookAtVerdict(Bottle bottle, Findings findings) {
    Verdict verdict =
        VerdictRules.of(
            bottle, Today.at(pour.now()), KeepingTimes.of(bottle), Capacities.of(bottle.label()));
    for (Reason reason : verdict.reasons()) {
      boolean looked =
          reason.ground() == Reason.Ground.TEST
              || reason.ground() == Reason.Ground.LABEL
              || reason.ground() == Reason.Ground.MISHAP;
      boolean ageUnknown =
          reason.ground() == Reason.Ground.AGE && bottle.label().ageFrom().isEmpty();
      if (looked || ageUnknown || reason.verdict() == Verdict.Kind.USE) {
        continue;
      }
      boolean discard = reason.verdict() == Verdict.Kind.DISCARD;
      findings.add(
          discard ? CheckState.WARNING : CheckState.OPEN,
          reason.words(),
          discard ? "Do not use it: mix fresh." : "Test it first, or mix fresh.");
    }
  }

  /** A load names one fixer; that it is one of two has to be known before it is poured. */
  private void lookAtPair(int step, FixerPair pair, Findings findings) {
    boolean first = pour.steps().get(step).bottle().filter(pair.first()::equals).isPresent();
    String other = first ? pair.second() : pair.first();
    boolean otherToo =
        pour.steps().stream().anyMatch(one -> one.bottle().filter(other::equals).isPresent());
    if (!otherToo) {
      findings.add(
          CheckState.OPEN,
          (first ? "first" : "second") + " of two fixers",
          first
              ? "Half of the fixing time in it, then half in "
                  + other
                  + " (CH-S01); note "
                  + other
                  + " in its book."
              : "Film clears in " + other + " first (CH-S01).");
    }
  }

  private static String howToTest(StepKind kind) {
    return kind.developing() || kind == StepKind.FIXER || kind == StepKind.BLEACH_FIX
        ? "Do a " + testOf(kind).word() + " in room light and note it under Shelf."
        : "Try it as its label says.";
  }

  private void lookAtStrength(StepKind kind, Bottle bottle, BottleNote note, Findings findings) {
    boolean developing = kind.developing() || kind == StepKind.MONOBATH;
    BottleRole role = bottle.label().role();
    if (developing && !names(bottle.label().contents(), pour.developer())) {
      findings.add(
          CheckState.WARNING,
          "holds " + bottle.label().contents() + ", the load was timed for " + pour.developer(),
          "Take the right bottle, or change the load.");
    }
    if (!developing && role == BottleRole.CONCENTRATE) {
      findings.add(
          CheckState.WARNING,
          "wrong dilution, it holds concentrate",
          "Mix the working solution as its label says.");
    }
    if (developing && role == BottleRole.CONCENTRATE && "stock".equals(pour.dilution())) {
      findings.add(
          CheckState.WARNING,
          "wrong dilution, it holds concentrate and the load is for stock",
          "Make the stock solution first.");
    }
    if (developing && role == BottleRole.WORKING) {
      note.dilution()
          .filter(written -> !written.equals(pour.dilution()))
          .ifPresent(
              written ->
                  findings.add(
                      CheckState.WARNING,
                      "wrong dilution, "
                          + written
                          + " stands on it and the load is for "
                          + pour.dilution(),
                      "Mix it anew, or change the load: the time follows."));
    }
  }

  /** How a bath of that kind is tried: what develops by a leader, all others by a clip of film. */
  static BathTest testOf(StepKind kind) {
    return kind.developing() ? BathTest.LEADER : BathTest.CLIP;
  }

  private static boolean names(String contents, String developer) {
    return bare(contents).contains(bare(developer)) || bare(developer).contains(bare(contents));
  }

  private static String bare(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
  }

  private LocalDate today() {
    return Today.at(pour.now()).today();
  }

  private static String day(Instant at) {
    return DAY.format(Today.at(at).today());
  }
}
