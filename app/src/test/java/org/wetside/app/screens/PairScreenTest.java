package org.wetside.app.screens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;

class PairScreenTest {
  private static final Instant EVENING = Instant.parse("2026-01-14T19:00:00Z");

  private @TempDir Path home;
  private final HandClock clock = new HandClock();
  private Wetside wetside;

  @BeforeEach
  void open() {
    wetside = Wetside.open(home, clock);
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  @Test
  void aCodeLetsOneScreenInAndNoSecond() {
    Invitation code = wetside.pairScreen().invite();

    PairOutcome first = wetside.pairScreen().pair(code.key(), " phone ");
    assertThat(first).isInstanceOf(PairOutcome.Paired.class);
    assertThat(wetside.findScreens().all()).extracting(Screen::name).containsExactly("phone");
    assertThat(wetside.findScreens().byKey(((PairOutcome.Paired) first).key()))
        .isInstanceOf(Known.LetIn.class);

    assertThat(wetside.pairScreen().pair(code.key(), "another")).isEqualTo(new PairOutcome.Used());
    assertThat(wetside.pairScreen().pair(code.figures(), "another"))
        .isEqualTo(new PairOutcome.Used());
    assertThat(wetside.findScreens().all()).hasSize(1);
  }

  @Test
  void theFiguresDoAsWellWithBlanksBetweenThem() {
    String figures = wetside.pairScreen().invite().figures();
    assertThat(figures).matches("[0-9]{8}");
    String typed = figures.substring(0, 4) + " " + figures.substring(4);
    assertThat(wetside.pairScreen().pair(typed, "tablet")).isInstanceOf(PairOutcome.Paired.class);
  }

  @Test
  void aCodeEndsAfterFiveMinutes() {
    Invitation code = wetside.pairScreen().invite();
    clock.now = EVENING.plus(Invitations.LASTS).minusMillis(1);
    assertThat(wetside.pairScreen().invitation()).contains(code);
    clock.now = EVENING.plus(Invitations.LASTS);
    assertThat(wetside.pairScreen().invitation()).isEmpty();
    PairOutcome expired = new PairOutcome.Expired(code.until());
    assertThat(wetside.pairScreen().pair(code.key(), "phone")).isEqualTo(expired);
    assertThat(wetside.pairScreen().pair(code.figures(), "phone")).isEqualTo(expired);
    assertThat(wetside.findScreens().all()).isEmpty();
  }

  @Test
  void aNewCodeEndsTheOneBefore() {
    Invitation before = wetside.pairScreen().invite();
    wetside.pairScreen().invite();
    assertThat(wetside.pairScreen().pair(before.key(), "phone"))
        .isEqualTo(new PairOutcome.Expired(EVENING));
  }

  @Test
  void fiveWrongTriesEndACode() {
    Invitation code = wetside.pairScreen().invite();
    for (int left = 4; left > 0; left--) {
      assertThat(wetside.pairScreen().pair("wrong", "phone"))
          .isEqualTo(new PairOutcome.Wrong(left));
    }
    assertThat(wetside.pairScreen().pair("wrong", "phone"))
        .isEqualTo(new PairOutcome.TooManyTries());
    assertThat(wetside.pairScreen().pair(code.key(), "phone"))
        .isEqualTo(new PairOutcome.TooManyTries());
  }

  @Test
  void withNoCodeShownNothingCanBeGuessed() {
    assertThat(wetside.pairScreen().pair("12345678", "phone"))
        .isEqualTo(new PairOutcome.NoneShown());
  }

  @Test
  void aBadNameUsesNoCodeUp() {
    Invitation code = wetside.pairScreen().invite();
    assertThatThrownBy(() -> wetside.pairScreen().pair(code.key(), "  "))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("1 to 40 characters");
    assertThat(wetside.pairScreen().pair(code.key(), "phone"))
        .isInstanceOf(PairOutcome.Paired.class);
  }

  @Test
  void aScreenThatWasRemovedIsKnownAsSuch() {
    PairOutcome.Paired phone = paired("phone");
    clock.now = EVENING.plusSeconds(90);
    wetside.removeScreen().remove(phone.screen().id());
    assertThat(wetside.findScreens().byKey(phone.key()))
        .isEqualTo(new Known.Removed("phone", EVENING.plusSeconds(90)));
    assertThat(wetside.findScreens().all()).isEmpty();
    assertThat(wetside.findScreens().byKey("anything")).isEqualTo(new Known.Unknown());
    assertThatThrownBy(() -> wetside.removeScreen().remove(phone.screen().id()))
        .isInstanceOf(BadValueException.class);
  }

  @Test
  void whenItWasLastSeenIsKeptToTheMinute() {
    PairOutcome.Paired phone = paired("phone");
    clock.now = EVENING.plusSeconds(59);
    wetside.findScreens().seen(phone.screen());
    assertThat(wetside.findScreens().all().get(0).seenAt()).isEqualTo(EVENING);
    clock.now = EVENING.plusSeconds(60);
    wetside.findScreens().seen(phone.screen());
    assertThat(wetside.findScreens().all().get(0).seenAt()).isEqualTo(clock.now);
  }

  /** Whoever reads the files of the home cannot let himself in with what he finds. */
  @Test
  void theKeyItselfIsNowhereInTheHome() throws IOException {
    PairOutcome.Paired phone = paired("phone");
    wetside.close();
    Set<Path> read = new HashSet<>();
    try (Stream<Path> files = Files.walk(home)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
        assertThat(bytes).doesNotContain(phone.key());
        if (bytes.contains(Secret.hash(phone.key()))) {
          read.add(file);
        }
      }
    }
    assertThat(read).isNotEmpty();
    wetside = Wetside.open(home, clock);
    assertThat(wetside.findScreens().byKey(phone.key())).isInstanceOf(Known.LetIn.class);
  }

  /** 128 bits in 22 characters, 256 in 43, and never the same twice. */
  @Test
  void secretsHoldAsMuchChanceAsIsSaid() {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < 1000; i++) {
      Invitation code = wetside.pairScreen().invite();
      assertThat(code.key()).matches("[A-Za-z0-9_-]{22}");
      seen.add(code.key());
    }
    assertThat(seen).hasSize(1000);
    assertThat(paired("phone").key()).matches("[A-Za-z0-9_-]{43}");
  }

  private PairOutcome.Paired paired(String name) {
    return (PairOutcome.Paired)
        wetside.pairScreen().pair(wetside.pairScreen().invite().key(), name);
  }

  /** Stands until it is moved. */
  private static final class HandClock extends Clock {
    private Instant now = EVENING;

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Instant instant() {
      return now;
    }
  }
}
