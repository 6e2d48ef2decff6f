package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

class JsonTextTest {
  enum Band {
    LOW,
    HIGH
  }

  record Step(String name, double factor, @Nullable Integer count) {}

  record View(
      String film,
      double seconds,
      int cycles,
      long atMillis,
      boolean dark,
      Band band,
      List<Step> steps,
      Map<String, Double> volumesMl,
      Optional<String> note,
      Optional<String> missing,
      Instant startedAt,
      LocalDate openedOn,
      List<Double> bandSeconds) {}

  private static final View VIEW =
      new View(
          "T-MAX \"400\" é °",
          420,
          7,
          1_700_000_000_000L,
          true,
          Band.HIGH,
          List.of(new Step("entry", 1, null), new Step("temperature", 0.8912, 2)),
          Map.of("water", 248.0),
          Optional.of("line\nbreak"),
          Optional.empty(),
          Instant.parse("2026-01-02T03:04:05.678Z"),
          LocalDate.of(2026, 1, 2),
          List.of());

  @Test
  void writesWhatTheBindingLibraryOfTheServerWrites() {
    JsonMapper library = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    assertThat(JsonText.of(VIEW)).isEqualTo(library.writeValueAsString(VIEW));
  }

  @Test
  void readsBackAsTheSameView() {
    assertThat(JsonMapper.shared().readValue(JsonText.of(VIEW), View.class)).isEqualTo(VIEW);
  }

  @Test
  void refusesWhatNoViewShouldHold() {
    assertThatThrownBy(() -> JsonText.of(new Thread())).hasMessageContaining("java.lang.Thread");
  }
}
