package org.wetside.acceptance.sound;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.core.process.Cue;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Tone;

/** The pattern of each act, as somebody learns them who listens to the processes there are. */
final class KnownTones {
  private KnownTones() {}

  static Map<String, Tone> of(Wetside wetside) {
    Map<String, Tone> known = new LinkedHashMap<>();
    for (FilmProcess process : wetside.findProcess().all()) {
      for (Cue cue :
          wetside.showCues().of(process.slug(), Optional.of(Duration.ofMinutes(9))).cues()) {
        known.put(cue.act().word(), cue.tone());
      }
    }
    return known;
  }
}
