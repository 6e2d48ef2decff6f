package org.wetside.web.learning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.learning.LearnedWords;
import org.wetside.app.learning.SeeLearned;
import org.wetside.core.learning.AcceptedFactor;
import org.wetside.core.learning.AcceptedIndex;
import org.wetside.core.learning.Belief;
import org.wetside.core.learning.ChartPoint;
import org.wetside.core.learning.Judgement;
import org.wetside.core.learning.Lesson;
import org.wetside.core.learning.OwnIndex;
import org.wetside.core.learning.OwnTime;
import org.wetside.core.learning.Used;
import org.wetside.core.quantity.ExposureIndex;

/**
 * What was learned from negatives.
 *
 * @param lessons of each film in a developer, the first judged in front
 * @param chart of the factors of all rolls, in the order of their development
 * @param flagged whether one of the last three rolls of the chart raises the flag
 */
public record LearnedView(List<LessonView> lessons, List<ChartPointView> chart, boolean flagged) {
  private static final int LAST = 3;

  /**
   * Of one film in one developer.
   *
   * @param film the film
   * @param filmCode its coating
   * @param developer the developer
   * @param factor the factor on the maker's time; null when no roll says anything of it
   * @param factorBand nine in ten, low and high; null with it
   * @param rolls how many rolls it rests on
   * @param byWords whether it rests on words, whose worth is a judgement
   * @param words the offer in words; null when there is nothing to offer and nothing in use
   * @param inUse the factor in use; null when what is printed is used
   * @param ownEi index at which shadows come out; null when no roll says anything of it
   * @param ownEiBand nine in ten, low and high; null with it
   * @param exposedEi the index the first of its rolls was exposed at; null with it
   * @param indexRolls how many rolls that rests on
   * @param indexByWords whether that rests on words, whose worth is a judgement
   * @param indexWords the offer in words; null when there is nothing to offer and nothing in use
   * @param indexInUse the index in use; null when none is
   * @param judged its rolls
   */
  public record LessonView(
      String film,
      String filmCode,
      String developer,
      @Nullable Double factor,
      @Nullable List<Double> factorBand,
      int rolls,
      boolean byWords,
      @Nullable String words,
      @Nullable InUseView inUse,
      @Nullable Double ownEi,
      @Nullable List<Double> ownEiBand,
      @Nullable Double exposedEi,
      int indexRolls,
      boolean indexByWords,
      @Nullable String indexWords,
      @Nullable IndexInUseView indexInUse,
      List<JudgementView> judged) {
    static LessonView of(
        Lesson lesson, Optional<AcceptedFactor> accepted, Optional<AcceptedIndex> ownIndex) {
      Optional<OwnTime> time = lesson.time();
      Optional<OwnIndex> index = lesson.index();
      return new LessonView(
          lesson.film(),
          lesson.of().filmCode(),
          lesson.of().developer(),
          time.map(OwnTime::factor).map(Rounded::thousandths).orElse(null),
          time.map(one -> band(one.belief())).orElse(null),
          time.map(one -> one.belief().rolls()).orElse(0),
          lesson.timeByWords(),
          LearnedWords.beside(time, accepted).orElse(null),
          accepted.map(InUseView::of).orElse(null),
          index.map(one -> whole(one.middle())).orElse(null),
          index.map(LearnedView::band).orElse(null),
          index.map(one -> one.exposed().isoArithmetic()).orElse(null),
          index.map(one -> one.belief().rolls()).orElse(0),
          lesson.indexByWords(),
          LearnedWords.indexBeside(index, ownIndex).orElse(null),
          ownIndex.map(IndexInUseView::of).orElse(null),
          lesson.rolls().stream().map(JudgementView::of).toList());
    }
  }

  /**
   * A factor in use.
   *
   * @param factor the factor
   * @param factorBand nine in ten, low and high
   * @param rolls how many rolls it rested on
   * @param acceptedAt when it was accepted
   */
  public record InUseView(double factor, List<Double> factorBand, int rolls, String acceptedAt) {
    static InUseView of(AcceptedFactor accepted) {
      return new InUseView(
          Rounded.thousandths(Math.exp(accepted.factor().lnFactor())),
          band(accepted.belief()),
          accepted.factor().rolls(),
          accepted.at().toString());
    }
  }

  /**
   * An own index in use.
   *
   * @param ei the index
   * @param eiBand nine in ten, low and high
   * @param rolls how many rolls it rested on
   * @param acceptedAt when it was accepted
   */
  public record IndexInUseView(double ei, List<Double> eiBand, int rolls, String acceptedAt) {
    static IndexInUseView of(AcceptedIndex accepted) {
      return new IndexInUseView(
          whole(accepted.index().middle()),
          band(accepted.index()),
          accepted.index().belief().rolls(),
          accepted.at().toString());
    }
  }

  /**
   * One roll of the control chart.
   *
   * @param roll its number
   * @param film the film
   * @param developer the developer
   * @param developedAt when its run was over
   * @param factor what it says alone
   * @param expectedFactor what was expected of it from the rolls before
   * @param sigmas how far off it is, in standard deviations of that expectation
   * @param heldSigmas the same against what was known before the rolls it is judged together with
   * @param drift what it raises, in words; empty when nothing
   * @param changed what had changed since the roll before
   */
  public record ChartPointView(
      String roll,
      String film,
      String developer,
      String developedAt,
      double factor,
      double expectedFactor,
      double sigmas,
      double heldSigmas,
      String drift,
      List<String> changed) {}

  /** The view of what was learned. */
  public static LearnedView of(SeeLearned.Now now) {
    List<LessonView> lessons =
        now.lessons().lessons().stream()
            .map(
                lesson ->
                    LessonView.of(
                        lesson, now.accepted(lesson.of()), now.acceptedIndex(lesson.of())))
            .toList();
    List<ChartPointView> chart = chart(now);
    return new LearnedView(
        lessons,
        chart,
        chart.subList(Math.max(0, chart.size() - LAST), chart.size()).stream()
            .anyMatch(point -> !point.drift().isEmpty()));
  }

  private static List<ChartPointView> chart(SeeLearned.Now now) {
    Map<String, Judgement> byRoll = new HashMap<>();
    now.lessons().lessons().stream()
        .flatMap(lesson -> lesson.rolls().stream())
        .forEach(told -> byRoll.put(told.roll().roll(), told.roll()));
    List<ChartPointView> points = new ArrayList<>();
    Used before = new Used("", "", "");
    for (ChartPoint point : now.lessons().chart().points()) {
      Judgement roll = byRoll.get(point.roll().roll());
      if (roll != null) {
        points.add(view(point, roll, roll.used().changedSince(before)));
        before = roll.used().after(before);
      }
    }
    return points;
  }

  private static ChartPointView view(ChartPoint point, Judgement roll, List<String> changed) {
    return new ChartPointView(
        roll.roll(),
        roll.film(),
        roll.of().developer(),
        roll.developed().at().toString(),
        Rounded.thousandths(Math.exp(point.roll().value())),
        Rounded.thousandths(Math.exp(point.expected())),
        Rounded.thousandths(point.residual()),
        Rounded.thousandths(point.held()),
        LearnedWords.drift(point),
        changed);
  }

  private static double whole(ExposureIndex index) {
    return Math.round(index.isoArithmetic());
  }

  private static List<Double> band(OwnIndex index) {
    return List.of(whole(index.low()), whole(index.high()));
  }

  private static List<Double> band(Belief belief) {
    return List.of(
        Rounded.thousandths(Math.exp(belief.mean() - belief.halfBand())),
        Rounded.thousandths(Math.exp(belief.mean() + belief.halfBand())));
  }
}
