package org.wetside.web.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.process.Act;
import org.wetside.core.process.Cue;
import org.wetside.core.process.CueSheet;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.PlacedStep;
import org.wetside.core.process.Step;
import org.wetside.core.process.Timeline;
import org.wetside.core.run.Placement;
import org.wetside.web.page.Hatch;

/**
 * One load on the evening's strip: its baths at their places, and when hands are wanted.
 *
 * @param number what stands above it
 * @param tank its tank
 * @param shapes its baths
 * @param hands when hands are wanted
 */
record EveningLoad(String number, String tank, List<Shape> shapes, List<Hand> hands) {
  /** A bath: slope up, flat, slope down. */
  record Shape(String hatch, Instant begin, Instant full, Instant drain, Instant end) {}

  /** Hands wanted; a pour is drawn heavier than a bout of agitation. */
  record Hand(Instant at, boolean pour) {}

  /** A load that is at the Bench or was. */
  static EveningLoad of(String number, BenchSnapshot run) {
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < run.moments().steps().size(); i++) {
      Placement.Moments at = run.moments().steps().get(i);
      Step step = run.state().plan().step(i);
      add(shapes, step, at.begin(), at.full(), at.drain(), at.end());
    }
    List<Hand> hands = new ArrayList<>();
    run.cues().forEach(cue -> addHand(hands, cue, run.at(cue)));
    return new EveningLoad(number, run.card().tank(), shapes, hands);
  }

  /** A load that would be poured at that moment. */
  static EveningLoad of(
      String number, String tank, FilmProcess process, Duration development, Instant start) {
    List<PlacedStep> placed = Timeline.of(process.withDevelopment(development).steps()).steps();
    List<Shape> shapes = new ArrayList<>();
    for (PlacedStep step : placed) {
      add(
          shapes,
          step.step(),
          start.plus(step.begin()),
          start.plus(step.full()),
          start.plus(step.drain()),
          start.plus(step.end()));
    }
    List<Hand> hands = new ArrayList<>();
    CueSheet.along(placed, tank).forEach(cue -> addHand(hands, cue, start.plus(cue.at())));
    return new EveningLoad(number, tank, shapes, hands);
  }

  Duration length() {
    return Duration.between(begin(), end());
  }

  Instant begin() {
    return shapes.get(0).begin();
  }

  Instant end() {
    return shapes.get(shapes.size() - 1).end();
  }

  private static void add(
      List<Shape> shapes, Step step, Instant begin, Instant full, Instant drain, Instant end) {
    shapes.add(new Shape(Hatch.of(step.kind()), begin, full, drain, end));
  }

  private static void addHand(List<Hand> hands, Cue cue, Instant at) {
    if (cue.act() == Act.POUR || cue.act() == Act.AGITATE) {
      hands.add(new Hand(at, cue.act() == Act.POUR));
    }
  }
}
