package org.wetside.acceptance.kill;

import java.time.Instant;
import java.util.Locale;
import java.util.Random;
import tools.jackson.databind.JsonNode;

/** Every kind of thing a hand does in a run, one after the other, with chance in its figures. */
final class RichEvents {
  private final Random random;
  private int made;

  RichEvents(Random random) {
    this.random = random;
  }

  /** The next event as a screen posts it, fitting where the run was last seen to stand. */
  String next(JsonNode run) {
    int step = Math.max(0, run.get("currentStep").asInt());
    return switch (made % 7) {
      case 0 -> event("note", step, "\"text\":\"seen " + made + "\"");
      case 1 -> event("reading taken", step, temperature());
      case 2 -> event("step begun", toBePoured(run, step), "\"moment\":\"full\"");
      case 3 -> event("lengthened", mayLast(run, step), "\"seconds\":" + (1 + random.nextInt(3)));
      case 4 -> event("cut short", step, "\"seconds\":" + (1 + random.nextInt(2)));
      case 5 -> event("undone", step, "\"undoes\":\"" + lastOwn(run) + "\"");
      default -> event("step drained", step, "");
    };
  }

  /** An event that does not depend on where the run stands. */
  String event(String kind, int step, String more) {
    made++;
    return "{\"id\":\"evening-"
        + made
        + "\",\"kind\":\""
        + kind
        + "\",\"occurredAt\":\""
        + Instant.now()
        + "\",\"screen\":\"laptop\",\"confirmed\":true,\"step\":"
        + step
        + (more.isEmpty() ? "" : ",")
        + more
        + "}";
  }

  private String temperature() {
    return String.format(Locale.ROOT, "\"temperatureC\":%.1f", 19.6 + random.nextInt(9) / 10.0);
  }

  /** The bath that is in the tank, or the one after it once a hand has said that it is in. */
  private static int toBePoured(JsonNode run, int step) {
    boolean said = run.get("steps").get(step).get("full").asString("").equals("pressed");
    return said && step + 1 < run.get("steps").size() ? step + 1 : step;
  }

  private static int mayLast(JsonNode run, int step) {
    for (JsonNode one : run.get("steps")) {
      if (one.get("index").asInt() > step && !one.get("lengthenToSeconds").isNull()) {
        return one.get("index").asInt();
      }
    }
    return step;
  }

  private static String lastOwn(JsonNode run) {
    String last = "nothing-to-undo";
    for (JsonNode one : run.get("events")) {
      boolean own = one.get("screen").asString().equals("laptop");
      if (own && one.get("applied").asBoolean() && !one.get("kind").asString().equals("undone")) {
        last = one.get("id").asString();
      }
    }
    return last;
  }
}
