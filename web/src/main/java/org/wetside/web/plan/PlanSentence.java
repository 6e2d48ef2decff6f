package org.wetside.web.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.plan.Roll;
import org.wetside.web.page.Count;

/** The answer of the start page in one sentence. */
record PlanSentence(
    List<LoadLine> loads,
    List<Roll> waiting,
    List<EveningLoad> strip,
    Optional<Instant> limit,
    Instant now,
    ZoneId zone) {
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  PlanPage.Say say() {
    long hung = loads.stream().filter(LoadLine::done).count();
    long going = loads.stream().filter(load -> load.run() != null && !load.done()).count();
    long left = loads.size() - hung - going;
    if (loads.isEmpty()) {
      return withoutLoads();
    }
    if (going + left == 0) {
      return new PlanPage.Say(
          Count.of(hung, "load hangs", "loads hang") + ". ",
          "Nothing is left to do",
          waiting.isEmpty() ? "." : "; " + rolls() + " in the drawer.");
    }
    String before =
        (hung > 0 ? Count.of(hung, "load hangs, ", "loads hang, ") : "")
            + (going > 0
                ? lower(hung, Count.of(going, "is at the Bench, ", "are at the Bench, "))
                : "");
    String toGo = left > 0 ? Count.of(left, "load to go", "loads to go") : "none to go";
    return new PlanPage.Say(
        before, before.isEmpty() ? toGo : toGo.toLowerCase(Locale.ROOT), "." + lastHangs());
  }

  private PlanPage.Say withoutLoads() {
    if (waiting.isEmpty()) {
      return new PlanPage.Say("No roll waits. Put the next one in ", "one line", ".");
    }
    return new PlanPage.Say(
        rolls() + ", and no load is made. ", "Tick the rolls", " that shall share a tank.");
  }

  private String rolls() {
    return Count.of(waiting.size(), "roll waits", "rolls wait");
  }

  private String lastHangs() {
    Optional<Instant> last = strip.stream().map(EveningLoad::end).max(Instant::compareTo);
    if (last.isEmpty()) {
      return "";
    }
    String at = " One after the other, the last strip hangs at " + clock(last.get());
    if (limit.isEmpty()) {
      return at + ".";
    }
    long minutes = Duration.between(last.get(), limit.get()).toMinutes();
    return minutes >= 0
        ? at + ", " + spell(minutes) + " before your limit."
        : at + ", " + spell(-minutes) + " after your limit.";
  }

  private static String spell(long minutes) {
    return minutes < 120
        ? minutes + (minutes == 1 ? " minute" : " minutes")
        : minutes / 60 + " hours";
  }

  private static String lower(long before, String text) {
    return before > 0 ? text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1) : text;
  }

  private String clock(Instant at) {
    return MINUTE.format(at.atZone(zone));
  }
}
