package org.wetside.core.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.ExposureIndex;

/**
 * Everything that judged rolls say: one lesson for each film in a developer, and the control chart
 * over all of them.
 *
 * @param lessons in the order in which the films were first judged
 * @param chart of the factors of all rolls
 */
public record Lessons(List<Lesson> lessons, ControlChart chart) {
  /** Nothing learned yet. */
  public static final Lessons NONE = new Lessons(List.of(), ControlChart.EMPTY);

  /** A roll exposed farther from the first says more of pushing than of the film's index. */
  private static final double MOST_STOPS_APART = 1.05;

  /** Keeps an unmodifiable copy. */
  public Lessons {
    lessons = List.copyOf(lessons);
  }

  /** Of all judged rolls that count. */
  public static Lessons from(List<Judgement> judged, LearningRules rules) {
    List<Judgement> rolls = new ArrayList<>(judged);
    rolls.sort(Comparator.comparing(roll -> roll.developed().at()));
    Map<FilmInDeveloper, ExposureIndex> first = new LinkedHashMap<>();
    rolls.forEach(roll -> roll.index().ifPresent(index -> first.putIfAbsent(roll.of(), index)));
    Map<FilmInDeveloper, List<Lesson.Told>> told = new LinkedHashMap<>();
    for (Judgement roll : rolls) {
      told.computeIfAbsent(roll.of(), unused -> new ArrayList<>())
          .add(
              new Lesson.Told(
                  roll, Reading.ofFactor(roll, rules), index(roll, first.get(roll.of()), rules)));
    }
    List<RollSeen> times = new ArrayList<>();
    List<RollSeen> indexes = new ArrayList<>();
    told.values()
        .forEach(
            all ->
                all.forEach(
                    one -> {
                      one.time().says().ifPresent(times::add);
                      one.index().says().ifPresent(indexes::add);
                    }));
    Learned time = Learned.from(rules.time(), times);
    Learned index = Learned.from(rules.index(), indexes);
    List<Lesson> lessons = new ArrayList<>();
    told.forEach(
        (of, all) ->
            lessons.add(
                new Lesson(
                    of,
                    all.get(0).roll().film(),
                    Optional.of(time.of(of)).filter(one -> one.rolls() > 0).map(OwnTime::new),
                    Optional.ofNullable(first.get(of))
                        .filter(unused -> index.of(of).rolls() > 0)
                        .map(exposed -> new OwnIndex(exposed, index.of(of))),
                    all)));
    return new Lessons(lessons, ControlChart.of(rules.time(), times));
  }

  /** The lesson of a film in a developer. */
  public Optional<Lesson> of(FilmInDeveloper pair) {
    return lessons.stream().filter(lesson -> lesson.of().equals(pair)).findFirst();
  }

  /** Stops from the index of the first roll, so that rolls of other indexes agree with it. */
  private static Reading index(Judgement roll, @Nullable ExposureIndex first, LearningRules rules) {
    Reading reading = Reading.ofIndex(roll, rules);
    if (first == null || roll.index().isEmpty() || reading.says().isEmpty()) {
      return reading;
    }
    double apart = first.stopsTo(roll.index().get()).count();
    if (Math.abs(apart) > MOST_STOPS_APART) {
      return new Reading(
          Optional.empty(),
          "no index: it was exposed at " + roll.index().get() + ", more than a stop from " + first,
          false);
    }
    return new Reading(
        reading.says().map(said -> said.shifted(apart)), reading.words(), reading.byWord());
  }
}
