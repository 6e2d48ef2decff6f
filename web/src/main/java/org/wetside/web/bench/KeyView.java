package org.wetside.web.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.Key;
import org.wetside.core.quantity.TimeSpan;

/** Something that may be pressed, and the part of the event that is known beforehand. */
public record KeyView(
    String role,
    String label,
    @Nullable String letter,
    @Nullable String from,
    @Nullable String until,
    @Nullable Double limitSeconds,
    Map<String, Object> event) {

  static KeyView of(Key key) {
    Map<String, Object> event = new LinkedHashMap<>();
    event.put("kind", key.kind().word());
    key.step().ifPresent(step -> event.put("step", step));
    key.moment().ifPresent(moment -> event.put("moment", moment.word()));
    return new KeyView(
        key.role().word(),
        key.label(),
        letter(key.role()),
        Instants.textOrNull(key.from()),
        Instants.textOrNull(key.until()),
        key.limit().map(TimeSpan::toSeconds).orElse(null),
        event);
  }

  private static @Nullable String letter(Key.Role role) {
    return switch (role) {
      case NEXT, FINISH -> "Space";
      case READING -> "R";
      case MISHAP -> "M";
      default -> null;
    };
  }
}
