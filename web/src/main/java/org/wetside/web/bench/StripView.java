package org.wetside.web.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.hands.AttentionWindow;
import org.wetside.core.hands.Clash;
import org.wetside.core.process.StepKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RunEvent;

/** A solid message above the sheet, until the person puts it away. */
public record StripView(
    String id, String text, String detail, @Nullable String from, @Nullable String to) {

  /** By then every screen has said whether it told the cues meanwhile. */
  private static final Duration SCREENS_ANSWER = Duration.ofSeconds(10);

  static List<StripView> all(BenchSnapshot at) {
    List<StripView> strips = new ArrayList<>();
    for (RunEvent event : at.state().events()) {
      if (event.what() instanceof Happening.Gap gap) {
        strips.add(of(at, event, gap));
      }
    }
    at.clash().ifPresent(clash -> strips.add(0, bothAtOnce(clash)));
    return strips;
  }

  private static StripView bothAtOnce(Clash clash) {
    return new StripView(
        "both-" + Instants.text(clash.at()),
        "Both tanks want your hands.",
        wanted(clash.one())
            + " and "
            + wanted(clash.other())
            + ". Nothing there may last longer: let the bath that develops go first.",
        null,
        null);
  }

  private static String wanted(AttentionWindow window) {
    return window.tank() + " (" + window.want().name().toLowerCase(Locale.ROOT) + ")";
  }

  private static StripView of(BenchSnapshot at, RunEvent event, Happening.Gap gap) {
    boolean asking = at.now().isBefore(gap.to().plus(SCREENS_ANSWER));
    List<String> missed = GapView.missed(at, gap);
    String detail = ranOn(at, event) + (asking && missed.isEmpty() ? "" : missed(missed));
    if (gap.clockJump().isNegative()) {
      return new StripView(
          "gap-" + event.sequence(),
          "This machine's clock was set back while the program was away.",
          "How long it was away is not known; compare the times with a watch. " + detail,
          null,
          null);
    }
    return new StripView(
        "gap-" + event.sequence(),
        "Away from " + Instants.text(gap.from()) + " to " + Instants.text(gap.to()) + ".",
        detail,
        Instants.text(gap.from()),
        Instants.text(gap.to()));
  }

  private static String ranOn(BenchSnapshot at, RunEvent event) {
    StepKind kind = at.state().plan().step(event.step()).kind();
    return "The " + kind.word() + " ran on.";
  }

  private static String missed(List<String> words) {
    return words.isEmpty()
        ? " Nothing was missed."
        : " Missed: "
            + String.join("; ", words)
            + ". Never make up for missed agitation; press what was really done.";
  }
}
