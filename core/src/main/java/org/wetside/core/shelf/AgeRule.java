package org.wetside.core.shelf;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.wetside.core.source.Standing;

/** What the age of a bottle says of it: past its time it is tested, long past it is discarded. */
final class AgeRule {
  private final Bottle bottle;
  private final LocalDate today;
  private final Vouched vouched;

  private AgeRule(Bottle bottle, LocalDate today, Vouched vouched) {
    this.bottle = bottle;
    this.today = today;
    this.vouched = vouched;
  }

  /** The reason its age gives, whichever way it speaks. */
  static Reason of(Bottle bottle, LocalDate today, Vouched vouched, Optional<KeepingTime> keeping) {
    return new AgeRule(bottle, today, vouched).reason(keeping);
  }

  private Reason reason(Optional<KeepingTime> keeping) {
    Optional<LocalDate> from = bottle.label().ageFrom();
    if (keeping.isEmpty()) {
      String words = since(from) + ", no keeping time on file: read the maker's data sheet";
      return age(
          from.isEmpty() ? vouched.unlessVouched() : Verdict.Kind.USE, words, Optional.empty());
    }
    if (from.isEmpty()) {
      boolean sealed = bottle.label().role() == BottleRole.CONCENTRATE;
      return age(sealed ? Verdict.Kind.USE : vouched.unlessVouched(), since(from), keeping);
    }
    return age(kindByAge(from.get(), keeping.get()), ageWords(from.get(), keeping.get()), keeping);
  }

  /** Past the time it is tested; past twice the time, or where no test is known, it goes. */
  private Verdict.Kind kindByAge(LocalDate from, KeepingTime keeping) {
    Optional<LocalDate> last = keeping.lastDay(from);
    if (last.isEmpty() || !today.isAfter(last.get())) {
      return Verdict.Kind.USE;
    }
    boolean twice = today.isAfter(last.get().plusDays(ChronoUnit.DAYS.between(from, last.get())));
    return twice || keeping.singleUse() || !vouched.canBeTested()
        ? Verdict.Kind.DISCARD
        : vouched.unlessVouched();
  }

  private String ageWords(LocalDate from, KeepingTime keeping) {
    boolean over = keeping.lastDay(from).filter(today::isAfter).isPresent();
    String beyond = keeping.storage() == bottle.storage() ? "" : ", and this one is not so full";
    return since(Optional.of(from)) + (over ? ", too long: " : ", ") + keeping.spoken() + beyond;
  }

  private String since(Optional<LocalDate> from) {
    if (from.isEmpty()) {
      return bottle.label().role() == BottleRole.CONCENTRATE ? "not opened yet" : "age not known";
    }
    long days = ChronoUnit.DAYS.between(from.get(), today);
    boolean mixed = bottle.label().mixedOn().equals(from);
    return (mixed ? "mixed " : "opened ")
        + (days == 0 ? "today" : days == 1 ? "yesterday" : days + " days ago");
  }

  private static Reason age(Verdict.Kind kind, String words, Optional<KeepingTime> keeping) {
    return new Reason(
        kind,
        Reason.Ground.AGE,
        words,
        keeping.map(time -> time.citation().toString()).orElse("common practice"),
        keeping.map(KeepingTime::standing).orElse(Standing.COMMON_PRACTICE));
  }
}
