package org.wetside.core.process;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Words the cues of one step; numbers them so that each keeps its identity when it moves. */
final class StepCues {
  private static final Duration TAP_TAKES = Duration.ofSeconds(1);

  private final PlacedStep placed;
  private final String tank;
  private final boolean lid;
  private final List<Cue> cues = new ArrayList<>();
  private final Map<Act, Integer> said = new EnumMap<>(Act.class);

  /**
   * @param tank name said in every cue; empty for none
   * @param lid whether the film is in a closed tank; otherwise in a dark room
   */
  StepCues(PlacedStep placed, String tank, boolean lid) {
    this.placed = placed;
    this.tank = tank;
    this.lid = lid;
  }

  List<Cue> cues() {
    return cues;
  }

  void addReady(Duration at) {
    add(Act.GET_READY, at, "Have ready: " + fromWhere(), sayFromWhere("have-ready"));
  }

  void addNext(Duration at) {
    add(Act.NEXT_BATH, at, "Next: " + fromWhere(), sayFromWhere("next"));
  }

  void addCapOnly(Duration at) {
    String text = lid ? "Cap only, not the lid" : "The light stays off";
    add(Act.CAP_ONLY, at, text, Saying.of(lid ? "cap-only" : "light-stays-off"));
  }

  void addLidOff(Duration at) {
    String text = lid ? "The lid may come off" : "The light may come on";
    add(Act.LID_OFF, at, text, Saying.of(lid ? "lid-off" : "light-may-come-on"));
  }

  void addHang(Duration at) {
    add(Act.HANG, at, "Hang the film", Saying.of("hang"));
  }

  /** Everything from the pour to the drain. */
  void addDuring() {
    StepKind kind = placed.step().kind();
    if (!kind.wet()) {
      String text = "Light on the film, " + Words.clock(placed.end().minus(placed.full()));
      add(Act.LIGHT_ON, placed.begin(), text, Saying.of("light-on-film"));
      return;
    }
    String in = kind.heading() + " in" + bottle(", bottle ");
    add(Act.POUR, placed.begin(), in, withBottle("pour").bath(kind));
    addAgitation();
    add(Act.DRAIN, placed.drain(), "Drain", Saying.of("drain"));
    if (!kind.water()) {
      Duration lead = placed.end().minus(placed.drain());
      Optional<String> back = placed.step().afterUse().bottle();
      add(
          Act.RETURN,
          placed.drain().plus(lead.dividedBy(5)),
          back.map(letter -> kind.heading() + " back to bottle " + letter)
              .orElse("Discard the " + kind.word()),
          back.map(letter -> Saying.of("back-to-bottle").letter(letter))
              .orElse(Saying.of("discard"))
              .bath(kind));
    }
  }

  private void addAgitation() {
    Duration untilDrain = placed.drain().minus(placed.full());
    List<Bout> bouts = Bouts.of(placed.step().agitation(), untilDrain);
    boolean restless = placed.step().agitation().manner().withoutRest();
    for (int i = 0; i < bouts.size(); i++) {
      Bout bout = bouts.get(i);
      Duration next = i + 1 < bouts.size() ? bouts.get(i + 1).inStep() : untilDrain;
      addBout(bout);
      if (!restless) {
        addRest(bout, next, i + 1 == bouts.size());
      }
      if (i == 0) {
        addReading(bout.end(), next);
      }
    }
    if (bouts.isEmpty() && untilDrain.compareTo(Duration.ofSeconds(20)) > 0) {
      rest(placed.full(), untilDrain, true);
    }
  }

  private void addBout(Bout bout) {
    AgitationSchedule schedule = placed.step().agitation();
    boolean lift = schedule.manner() == Manner.FILM_LIFT;
    String verb = lift ? "Lift" : "Agitate";
    String say = lift ? "lift" : "agitate";
    String text;
    Saying saying;
    if (schedule.manner() == Manner.ROTARY) {
      text = "Rotate, " + speed(schedule.revolutionsPerMinute());
      saying = Saying.of("rotate-all-the-time");
    } else if (schedule.manner() == Manner.CONTINUOUS) {
      text = "Agitate all the time";
      saying = Saying.of("agitate-all-the-time");
    } else if (bout.counted()) {
      text = verb + " " + bout.count() + "×";
      saying = Saying.of(say + (bout.count() == 1 ? "-once" : "-times")).count(bout.count());
    } else {
      text = verb + " " + Words.seconds(bout.length());
      saying = Saying.of(say + "-for").span(bout.length());
    }
    add(Act.AGITATE, placed.full().plus(bout.inStep()), bout.count(), bout.length(), text, saying);
  }

  private void addRest(Bout bout, Duration next, boolean lastBout) {
    Duration over = placed.full().plus(bout.end());
    boolean tap = placed.step().agitation().tap();
    if (tap) {
      add(Act.TAP, over, "Tap the tank", Saying.of("tap"));
    }
    // Two tones at one moment would be neither: the rest is told when the tap has sounded.
    Duration rests = tap ? bout.end().plus(TAP_TAKES) : bout.end();
    if (rests.compareTo(next) < 0) {
      rest(placed.full().plus(rests), next, lastBout);
    }
  }

  private void rest(Duration at, Duration until, boolean untilDrain) {
    String text = (untilDrain ? "Rest until the drain at " : "Rest until ") + Words.clock(until);
    add(Act.REST, at, text, Saying.of("rest"));
  }

  /** A thermometer goes in where there is time for it: in the first rest of a developer. */
  private void addReading(Duration restBegins, Duration restEnds) {
    Duration at = restBegins.plusSeconds(3);
    boolean timeEnough = at.plusSeconds(15).compareTo(restEnds) <= 0;
    if (placed.step().kind().developing() && timeEnough) {
      add(Act.READ, placed.full().plus(at), "Take a reading", Saying.of("take-reading"));
    }
  }

  private String fromWhere() {
    StepKind kind = placed.step().kind();
    if (!kind.wet()) {
      return "light for " + kind.word();
    }
    return kind.water() ? "water for the " + kind.word() : kind.word() + bottle(", bottle ");
  }

  private Saying sayFromWhere(String sentence) {
    StepKind kind = placed.step().kind();
    if (!kind.wet()) {
      return Saying.of(sentence + "-light");
    }
    return (kind.water() ? Saying.of(sentence + "-water") : withBottle(sentence)).bath(kind);
  }

  private Saying withBottle(String sentence) {
    return placed
        .step()
        .bottle()
        .map(letter -> Saying.of(sentence + "-from-bottle").letter(letter))
        .orElse(Saying.of(sentence));
  }

  private String bottle(String before) {
    return placed.step().bottle().map(letter -> before + letter).orElse("");
  }

  private static String speed(double revolutionsPerMinute) {
    return String.format(Locale.ROOT, "%.0f rev/min", revolutionsPerMinute);
  }

  private void add(Act act, Duration at, String text, Saying saying) {
    add(act, at, 0, Duration.ZERO, text, saying);
  }

  private void add(Act act, Duration at, int count, Duration length, String text, Saying saying) {
    int before = said.merge(act, 1, Integer::sum) - 1;
    String named = tank.isEmpty() ? "" : tank + ": ";
    cues.add(
        new Cue(
            placed.index() + "-" + act.word().replace(' ', '-') + "-" + before,
            at,
            at.minus(placed.full()),
            placed.index(),
            act,
            count,
            length,
            named + text,
            saying.called(tank),
            ActSignals.tone(act),
            ActSignals.countIn(act),
            ActSignals.signal(act)));
  }
}
