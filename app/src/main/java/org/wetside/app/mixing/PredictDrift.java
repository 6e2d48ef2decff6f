package org.wetside.app.mixing;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.app.NoAnswerException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.thermal.DriftFit;
import org.wetside.core.thermal.TimeInBand;
import org.wetside.core.thermal.TimedReading;

/** Where a bath left alone is going, from readings of it. */
public final class PredictDrift {
  /**
   * What is known and asked.
   *
   * @param readings at least two; three or more when the room is not given
   * @param room the surroundings; empty to find them from the readings
   * @param band when will the bath be in it
   * @param stretch over which the mean is asked
   * @param ahead how long after the first reading the temperature is asked
   */
  public record Question(
      List<TimedReading> readings,
      Optional<Temperature> room,
      Optional<TemperatureRange> band,
      Optional<Stretch> stretch,
      Optional<Duration> ahead) {
    public Question {
      readings = List.copyOf(readings);
    }
  }

  /** From and to, counted from the first reading. */
  public record Stretch(Duration from, Duration to) {}

  /**
   * What follows.
   *
   * @param fit the drift found
   * @param inBand when the bath is in the band, if one was asked for
   * @param mean over the stretch, if one was asked for
   * @param ahead the temperature then, if it was asked for
   */
  public record Answer(
      DriftFit.Found fit,
      Optional<TimeInBand> inBand,
      Optional<Temperature> mean,
      Optional<Temperature> ahead) {}

  /**
   * Fits the drift and follows it.
   *
   * @throws NoAnswerException when the readings do not determine one, with the reason
   */
  public Answer answer(Question question) {
    DriftFit fit =
        question
            .room()
            .map(room -> DriftFit.withRoom(question.readings(), room))
            .orElseGet(() -> DriftFit.findingRoom(question.readings()));
    if (fit instanceof DriftFit.NotDeterminable none) {
      throw new NoAnswerException("no drift can be told from these readings: " + none.reason());
    }
    DriftFit.Found found = (DriftFit.Found) fit;
    return new Answer(
        found,
        question.band().map(band -> found.drift().timeIn(band, found.start())),
        question.stretch().map(over -> found.drift().mean(found.start(), over.from(), over.to())),
        question.ahead().map(after -> found.drift().after(found.start(), after)));
  }
}
