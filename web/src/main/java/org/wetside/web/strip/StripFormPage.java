package org.wetside.web.strip;

import java.util.LinkedHashMap;
import java.util.Map;
import org.wetside.core.development.Vessel;
import org.wetside.core.strip.StepLight;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the form of a strip.
 *
 * @param sheet the sheet
 * @param form as it is typed
 * @param tools what it may have been made with
 * @param path where it is sent
 * @param changes number of the strip that is read again; empty for a new one
 */
public record StripFormPage(
    Sheet sheet, FilledForm form, StripTools tools, String path, String changes) {
  /** The lights to choose from, the one that claims most last. */
  public Map<String, String> lights() {
    Map<String, String> words = new LinkedHashMap<>();
    for (StepLight light :
        new StepLight[] {
          StepLight.RELATIVE, StepLight.ESTIMATED, StepLight.CAMERA, StepLight.CALIBRATED
        }) {
      words.put(light.word(), light.meaning());
    }
    return words;
  }

  /** What it may have been developed in. */
  public Map<String, String> vessels() {
    return vesselWords();
  }

  /** What measured film may be developed in, by the word that is sent. */
  public static Map<String, String> vesselWords() {
    Map<String, String> words = new LinkedHashMap<>();
    for (Vessel vessel :
        new Vessel[] {
          Vessel.NOT_STATED, Vessel.SMALL_TANK, Vessel.LARGE_TANK, Vessel.ROTARY, Vessel.TRAY
        }) {
      words.put(vessel.word(), vessel.label());
    }
    return words;
  }

  /** What the first column may be. */
  public Map<String, String> columns() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("logH", "log exposure and density");
    words.put("step", "step of the tablet and density");
    words.put("stops", "stops more or less and density");
    return words;
  }
}
