package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.wetside.core.process.Cue;
import org.wetside.core.process.CueSheet;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Saying;
import org.wetside.core.process.Speech;
import org.wetside.core.process.Timeline;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.run.MishapAdvice;

class SpokenWordsTest {
  private static final SpokenWords WORDS = SpokenWords.english();
  private static final VoiceClips CLIPS = VoiceClips.in(SpokenWords.ENGLISH);

  @Test
  void aCueIsSaidInWordsAndInClips() {
    Saying pour = new Saying("pour-from-bottle", Map.of("bath", "fixer", "letter", "F"), "Double");
    Speech speech = WORDS.say(pour);
    assertThat(speech.text()).isEqualTo("Double: fixer in, bottle F.");
    assertThat(speech.clips()).containsExactly("double", "fixer", "in bottle", "f");
  }

  @Test
  void aSpanIsSaidInMinutesAndSeconds() {
    assertThat(said(90)).isEqualTo("Agitate for 1 minute 30 seconds.");
    assertThat(said(60)).isEqualTo("Agitate for 1 minute.");
    assertThat(said(1)).isEqualTo("Agitate for 1 second.");
    assertThat(said(0)).isEqualTo("Agitate for 0 seconds.");
  }

  @Test
  void aNameThatNoClipKnowsIsCalledByItsFirstLetters() {
    Speech speech = WORDS.say(new Saying("drain", Map.of(), "Tank 2 Old Mill"));
    assertThat(speech.text()).isEqualTo("Tank 2 Old Mill: Drain now.");
    assertThat(speech.clips()).containsExactly("tank", "2", "old", "m", "drain now");
  }

  @Test
  void aNumberInANameThatHasNoClipIsSaidDigitByDigit() {
    assertThat(tank("Tank 75")).containsExactly("tank", "7", "5");
    assertThat(tank("Tank 60")).containsExactly("tank", "60");
    assertThat(tank("Tank 007")).containsExactly("tank", "0", "0", "7");
    assertThat(tank("T12")).containsExactly("t", "12");
    assertThat(CLIPS.places().keySet()).containsAll(tank("Tank 1984")).contains("60");
  }

  @Test
  void twoTanksThatWouldSoundAlikeAreToldApart() {
    assertThat(tank("Mill")).isEqualTo(tank("Meadow"));
    assertThat(tank("Mill", "Meadow")).containsExactly("m", "i", "l", "l");
    assertThat(tank("Meadow", "Mill")).containsExactly("m", "e", "a", "d", "o", "w");
    assertThat(tank("Mill", "Mill", "Double")).as("nothing else sounds so").containsExactly("m");
    assertThat(tank("Tank-2", "tank 2")).containsExactly("tank", "2", "1");
    assertThat(tank("tank 2", "Tank-2")).containsExactly("tank", "2", "2");
  }

  @Test
  void namesThatNoClipCanSpellAreNumbered() {
    assertThat(tank("Бак")).isEmpty();
    assertThat(tank("Бак", "Другой")).containsExactly("1");
    assertThat(tank("Другой", "Бак")).containsExactly("2");
  }

  private static List<String> tank(String name, String... others) {
    List<String> clips = WORDS.say(new Saying("drain", Map.of(), name), List.of(others)).clips();
    return clips.subList(0, clips.size() - 1);
  }

  @Test
  void everyCueOfEveryProcessHasAClipForEachPiece() {
    for (FilmProcess process : BuiltInProcesses.all()) {
      boolean asks = process.steps().stream().anyMatch(step -> step.duration().isEmpty());
      FilmProcess timed = asks ? process.withDevelopment(Duration.ofMinutes(9)) : process;
      for (Cue cue : CueSheet.along(Timeline.of(timed.steps()).steps(), "Double")) {
        Speech speech = WORDS.say(cue.saying());
        assertThat(speech.clips()).as(process.slug() + ": " + speech.text()).isNotEmpty();
        assertThat(CLIPS.places().keySet()).containsAll(speech.clips());
      }
    }
  }

  @Test
  void whatIsToBeSpokenHasBeenSpokenAndNothingElse() {
    assertThat(new TreeSet<>(CLIPS.places().keySet()))
        .isEqualTo(new TreeSet<>(WORDS.toBeSpoken().keySet()));
  }

  @Test
  void theClipsFollowOneAnotherInTheFile() {
    List<VoiceClips.Place> places =
        CLIPS.places().values().stream()
            .sorted((one, other) -> one.from().compareTo(other.from()))
            .toList();
    for (int i = 0; i < places.size(); i++) {
      assertThat(places.get(i).length()).isBetween(Duration.ofMillis(80), Duration.ofSeconds(15));
      if (i > 0) {
        Duration end = places.get(i - 1).from().plus(places.get(i - 1).length());
        assertThat(places.get(i).from()).isGreaterThanOrEqualTo(end);
      }
    }
    assertThat(CLIPS.sound()).startsWith('O', 'g', 'g', 'S');
    assertThat(CLIPS.sound().length).as("small").isLessThan(600_000);
  }

  @Test
  void theFirstAdviceOfEveryMishapIsSpokenAsItIsWritten() {
    Set<String> spoken = WORDS.toBeSpoken().keySet();
    for (MishapAdvice mishap : Mishaps.all()) {
      assertThat(spoken).contains(SpokenWords.clipOf(mishap.firstMinute()));
    }
  }

  @Test
  void aLanguageWithoutAFileIsRefused() {
    assertThatThrownBy(() -> SpokenWords.in("xx"))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("voice/xx.csv");
  }

  private static String said(int seconds) {
    Map<String, String> parts = Map.of("seconds", Integer.toString(seconds));
    return WORDS.say(new Saying("agitate-for", parts, "")).text();
  }
}
