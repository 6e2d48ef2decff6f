package org.wetside.core.development;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.TimeSpan;

/** What helps where there is no honest time: the nearest entries and a clip test. */
final class Unanswered {
  private static final int MOST_NEAREST = 4;
  private static final int LEAST_CLIPS = 3;
  private static final int MOST_CLIPS = 5;

  /** One metered exposure, one a stop under, one a stop over: common practice. */
  private static final int FRAMES_PER_CLIP = 3;

  /** Times closer than this cannot be told apart by eye: common practice. */
  private static final double CLIP_STEP = 1.2;

  private final TimeLibrary library;
  private final TimeQuestion question;
  private final RouteFinder finder;

  Unanswered(TimeLibrary library, TimeQuestion question, RouteFinder finder) {
    this.library = library;
    this.question = question;
    this.finder = finder;
  }

  TimeAnswer answer() {
    return new TimeAnswer.NoHonestTime(question, finder.refusals, nearest(), plan());
  }

  private List<TimeEntry> nearest() {
    String film = question.film().code();
    return Stream.of(library.own().entriesOf(film), library.published().entriesOf(film))
        .flatMap(List::stream)
        .map(entry -> new Near(entry, distance(entry)))
        .sorted(Comparator.comparingDouble(Near::distance))
        .limit(MOST_NEAREST)
        .map(Near::entry)
        .toList();
  }

  /** An entry with its distance, which is computed once and compared often. */
  private record Near(TimeEntry entry, double distance) {}

  /** The larger the further: another developer counts most, then agitation, then dilution. */
  private double distance(TimeEntry entry) {
    double far = 0;
    far += entry.developer().equals(question.developer().name()) ? 0 : 20;
    far += entry.agitation().serves(question.agitation()) ? 0 : 10;
    far += entry.dilution().matches(question.dilution()) ? 0 : 4;
    far += entry.format().covers(question.format()) ? 0 : 2;
    far += entry.vessel() == question.vessel() ? 0 : 2;
    far +=
        entry
            .exposureIndex()
            .map(index -> Math.abs(index.stopsTo(question.exposureIndex()).count()))
            .orElse(3.0);
    far +=
        entry
            .temperature()
            .map(at -> Math.abs(at.minus(question.temperature()).kelvins()) / 4)
            .orElse(3.0);
    return far;
  }

  private ClipTestPlan plan() {
    Optional<Route> best = finder.doubtful.stream().min(Comparator.comparingDouble(Route::lnSd));
    if (best.isPresent()) {
      double middle = best.get().seconds();
      double reach = Math.exp(Band.NINETY_PERCENT * Math.min(best.get().lnSd(), 0.35));
      return spread(
          middle / reach,
          middle * reach,
          "the middle is what the nearest entry would lead to, doubtful as it is: "
              + Words.clock(middle));
    }
    return fromOtherFilms().orElseGet(() -> unknown());
  }

  /** What other films take in this developer, as a range to look in, never as a time. */
  private Optional<ClipTestPlan> fromOtherFilms() {
    Dilution wanted = question.dilution();
    double celsius = question.temperature().celsius();
    double[] seconds =
        library.allOfDeveloper(question.developer().name()).stream()
            .filter(series -> series.sameDilution(wanted))
            .filter(series -> series.first().agitation().serves(question.agitation()))
            .filter(series -> series.first().vessel() != Vessel.MACHINE)
            .filter(series -> series.spans(celsius))
            .mapToDouble(series -> Math.exp(series.lnSecondsAt(celsius)))
            .sorted()
            .toArray();
    return seconds.length == 0
        ? Optional.empty()
        : Optional.of(
            spread(
                seconds[0],
                seconds[seconds.length - 1],
                "the range is what other films take in this developer at this temperature"));
  }

  private static ClipTestPlan unknown() {
    return new ClipTestPlan(
        LEAST_CLIPS,
        FRAMES_PER_CLIP,
        List.of(),
        "take the time the developer's leaflet gives for the film most like this one as the"
            + " middle, then a quarter less and a quarter more");
  }

  private static ClipTestPlan spread(double low, double high, String middle) {
    double least = Math.pow(CLIP_STEP, LEAST_CLIPS - 1);
    double widen = Math.sqrt(Math.max(1, least * low / high));
    double shortest = low / widen;
    double ratio = high * widen / shortest;
    int wanted = (int) Math.ceil(Math.log(ratio) / Math.log(CLIP_STEP)) + 1;
    int clips = Math.min(Math.max(wanted, LEAST_CLIPS), MOST_CLIPS);
    List<Duration> times = new ArrayList<>();
    for (int i = 0; i < clips; i++) {
      times.add(quarterMinutes(shortest * Math.pow(ratio, i / (double) (clips - 1))));
    }
    return new ClipTestPlan(clips, FRAMES_PER_CLIP, times, middle);
  }

  private static Duration quarterMinutes(double seconds) {
    return TimeSpan.ofSeconds(Math.max(1, Math.round(seconds / 15)) * 15.0);
  }
}
