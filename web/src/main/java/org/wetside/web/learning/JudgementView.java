package org.wetside.web.learning;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.learning.ContrastWord;
import org.wetside.core.learning.Judgement;
import org.wetside.core.learning.Lesson;
import org.wetside.core.learning.Reading;
import org.wetside.core.learning.ReferencePair;
import org.wetside.core.learning.ShadowWord;
import org.wetside.core.quantity.TimeSpan;

/**
 * A judged roll and what it says alone.
 *
 * @param roll its number
 * @param film the film
 * @param developer the developer
 * @param judgedAt when it was judged
 * @param developedAt when its run was over
 * @param edgePrint how the edge print looks
 * @param shadows how shadows look; null when not said
 * @param contrast how contrasty it is; null when not said
 * @param baseFogDensity density of clear film; null when not read
 * @param shadowDensity density four stops under; null without a pair
 * @param lightDensity density two stops over; null without a pair
 * @param developedSeconds development it was worth; null when not recorded
 * @param makersSeconds the maker's time for it; null when there is none
 * @param makersSource where that is from, or why there is none
 * @param factor the factor on the maker's time that it says; null when it says nothing of it
 * @param factorWords how that came about, or why it says nothing
 * @param indexStops stops from the index of the first roll; null when it says nothing of it
 * @param indexWords how that came about, or why it says nothing
 * @param water the water; empty when not known
 * @param thermometer the thermometer; empty when not known
 * @param batch the bottle of developer; empty when not known
 */
public record JudgementView(
    String roll,
    String film,
    String developer,
    String judgedAt,
    String developedAt,
    String edgePrint,
    @Nullable String shadows,
    @Nullable String contrast,
    @Nullable Double baseFogDensity,
    @Nullable Double shadowDensity,
    @Nullable Double lightDensity,
    @Nullable Double developedSeconds,
    @Nullable Double makersSeconds,
    String makersSource,
    @Nullable Double factor,
    String factorWords,
    @Nullable Double indexStops,
    String indexWords,
    String water,
    String thermometer,
    String batch) {
  /** The view of a judged roll. */
  public static JudgementView of(Lesson.Told told) {
    Judgement roll = told.roll();
    Optional<ReferencePair> pair = roll.seen().pair();
    return new JudgementView(
        roll.roll(),
        roll.film(),
        roll.of().developer(),
        roll.at().toString(),
        roll.developed().at().toString(),
        roll.seen().edge().word(),
        roll.seen().shadows().map(ShadowWord::word).orElse(null),
        roll.seen().contrast().map(ContrastWord::word).orElse(null),
        pair.flatMap(ReferencePair::baseFog).orElse(null),
        pair.map(ReferencePair::shadow).orElse(null),
        pair.map(ReferencePair::light).orElse(null),
        seconds(roll.developed().lasted()),
        seconds(roll.developed().makers()),
        roll.developed().makersSource(),
        value(told.time()).map(Math::exp).map(Rounded::thousandths).orElse(null),
        told.time().words(),
        value(told.index()).map(Rounded::thousandths).orElse(null),
        told.index().words(),
        roll.used().water(),
        roll.used().thermometer(),
        roll.used().batch());
  }

  private static Optional<Double> value(Reading reading) {
    return reading.says().map(said -> said.value());
  }

  private static @Nullable Double seconds(Optional<Duration> duration) {
    return duration.map(TimeSpan::toSeconds).orElse(null);
  }
}
