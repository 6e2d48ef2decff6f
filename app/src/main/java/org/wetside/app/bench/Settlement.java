package org.wetside.app.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wetside.app.shelf.FilmGrain;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.RollState;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RollInTank;
import org.wetside.core.run.RunCard;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;
import org.wetside.core.shelf.FilmUse;
import org.wetside.store.BottlesInRun;
import org.wetside.store.Loads;
import org.wetside.store.RollSearch;
import org.wetside.store.Rolls;
import org.wetside.store.Session;

/**
 * What the end of a run does to everything else, in the transaction that stores the end: bottles
 * are debited, rolls become negatives, their record becomes findable. Taking the end back undoes
 * it.
 */
final class Settlement {
  /** Liquid that one roll takes along and that never comes back (CH-S30, {@code carried over}). */
  private static final double CARRY_OUT_ML = 10;

  private final Session session;
  private final LiveRun run;

  Settlement(Session session, LiveRun run) {
    this.session = session;
    this.run = run;
  }

  /** All steps were done. */
  void finish(Instant at) {
    move(false, at);
    new Rolls(session).markProcessed(numbers(), at);
    run.card().load().ifPresent(load -> new Loads(session).move(load, LoadState.DONE));
    keepWords();
  }

  /** The end was taken back. */
  void reopen(Instant at) {
    move(true, at);
    new Rolls(session).move(numbers(), RollState.LOADED);
    run.card().load().ifPresent(load -> new Loads(session).move(load, LoadState.RUNNING));
  }

  /** Given up before the end: what was poured is gone, and the rolls are the owner's to judge. */
  void abandon(Instant at) {
    if (run.state().startedAt().isPresent()) {
      move(false, at);
      new Rolls(session).markProcessed(numbers(), at);
      run.card().load().ifPresent(load -> new Loads(session).move(load, LoadState.DONE));
      keepWords();
    } else {
      new Rolls(session).move(numbers(), RollState.LOADED);
      run.card().load().ifPresent(load -> new Loads(session).move(load, LoadState.PLANNED));
    }
  }

  private List<String> numbers() {
    return run.card().rolls().stream().map(RollInTank::number).toList();
  }

  private void move(boolean back, Instant at) {
    BottlesInRun bottles = new BottlesInRun(session);
    String identity = Long.toString(run.card().id());
    Instant since = run.state().startedAt().orElse(at);
    Set<String> counted = new HashSet<>();
    for (int i = 0; i <= run.state().current() && i < run.taken().size(); i++) {
      Step step = run.state().plan().step(i);
      Optional<Volume> taken = run.taken().get(i);
      if (taken.isEmpty() || step.bottle().isEmpty()) {
        continue;
      }
      String letter = step.bottle().get();
      if (!bottles.wasThere(letter, since)) {
        continue;
      }
      // A roll that is poured on twice from one bottle is still one roll.
      List<FilmUse> film = counted.add(letter) ? film() : List.of();
      Volume returned = returned(step, taken.get());
      if (back) {
        Volume gone = taken.get().minus(returned);
        bottles.undoUse(letter, gone, film, identity, since, at);
      } else {
        bottles.debit(letter, taken.get(), film, identity, since, at);
        if (returned.millilitres() > 0) {
          bottles.giveBack(letter, returned, identity, since, at);
        }
      }
    }
  }

  private Volume returned(Step step, Volume taken) {
    if (step.afterUse().bottle().isEmpty()) {
      return Volume.ZERO;
    }
    double rolls = film().stream().mapToDouble(use -> use.amount().rolls()).sum();
    return Volume.ofMillilitres(Math.max(0, taken.millilitres() - CARRY_OUT_ML * rolls));
  }

  private List<FilmUse> film() {
    return run.card().rolls().stream().map(this::use).toList();
  }

  /** As it was when the run was opened; only its grain is looked up now. */
  private FilmUse use(RollInTank roll) {
    boolean tabular =
        new Rolls(session)
            .find(roll.number())
            .map(FilmGrain::tabular)
            .orElseGet(() -> FilmGrain.tabular(roll.film()));
    return new FilmUse(roll.number(), roll.film(), roll.amount(), tabular);
  }

  private void keepWords() {
    RunCard card = run.card();
    RunState state = run.state();
    List<String> words = new ArrayList<>();
    words.add(card.name());
    words.add(card.tank());
    words.add(card.processName());
    words.add(state.startedAt().map(Instant::toString).orElse("").replaceFirst("T.*", ""));
    state.plan().steps().forEach(step -> step.bottle().ifPresent(b -> words.add("bottle " + b)));
    for (RunEvent event : state.applied()) {
      if (event.what() instanceof Happening.Mishap mishap) {
        words.add(mishap.what());
      } else if (event.what() instanceof Happening.Note note) {
        words.add(note.text());
      }
    }
    String record = words.stream().filter(word -> !word.isBlank()).collect(Collectors.joining(" "));
    RollSearch search = new RollSearch(session);
    for (String number : numbers()) {
      search.keepRecord(number, card.developer() + " " + card.dilution().label(), record);
    }
  }
}
