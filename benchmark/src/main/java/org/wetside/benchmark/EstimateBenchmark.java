package org.wetside.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.wetside.app.Wetside;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.development.TimeEstimator;
import org.wetside.core.development.TimeQuestion;
import org.wetside.reference.DevelopmentTimes;

/** A development time, with everything read and warm: as the pages ask for it at every load. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EstimateBenchmark {
  /** What is asked. */
  @Param public Asked asked = Asked.PRINTED;

  private final Map<Asked, TimeQuestion> questions = new EnumMap<>(Asked.class);
  private final TimeEstimator estimator = new TimeEstimator(DevelopmentTimes.library());
  private final Wetside wetside;

  /** Over a home with no times of one's own. */
  public EstimateBenchmark() {
    wetside = Wetside.openToRead(emptyHome(), Clock.systemUTC());
    for (Asked each : Asked.values()) {
      questions.put(each, questionOf(wetside.askTime().answer(each.request())));
    }
  }

  /** The estimate itself: from a question to its answer with basis, bands, others, warnings. */
  @Benchmark
  public TimeAnswer estimate() {
    return estimator.answer(Objects.requireNonNull(questions.get(asked)));
  }

  /** The use case: what was typed is understood, the user's own times are looked for first. */
  @Benchmark
  public TimeAnswer useCase() {
    return wetside.askTime().answer(asked.request());
  }

  private static TimeQuestion questionOf(TimeAnswer answer) {
    return answer instanceof TimeAnswer.Estimate estimate
        ? estimate.question()
        : ((TimeAnswer.NoHonestTime) answer).question();
  }

  private static Path emptyHome() {
    try {
      return Files.createTempDirectory("wetside-benchmark");
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
