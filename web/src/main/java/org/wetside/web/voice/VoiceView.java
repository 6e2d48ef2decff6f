package org.wetside.web.voice;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.wetside.core.process.Sounds;
import org.wetside.core.process.Tone;
import org.wetside.reference.SpokenWords;
import org.wetside.reference.VoiceClips;

/**
 * How a screen sounds.
 *
 * @param language of the clips, for example en
 * @param clips for each clip where it begins in the sound file and how long it is, both in ms
 * @param words what is said that belongs to no cue, by its key
 * @param countIn the tick before an act
 * @param alive the tick that says the sound is alive
 * @param mishap what sounds when something went wrong
 * @param aliveEverySeconds how often that tick comes
 * @param loud loudness of an act, of full scale
 * @param soft loudness of the two ticks, of full scale
 * @param edgeMilliseconds how long a note takes to come and to go
 * @param wordsAfterMilliseconds from the end of a tone to the beginning of the words
 */
public record VoiceView(
    String language,
    Map<String, List<Long>> clips,
    Map<String, String> words,
    List<Tone.Note> countIn,
    List<Tone.Note> alive,
    List<Tone.Note> mishap,
    int aliveEverySeconds,
    double loud,
    double soft,
    int edgeMilliseconds,
    int wordsAfterMilliseconds) {
  private static final String PAGE = "page.";

  static VoiceView of(String language) {
    SpokenWords spoken = SpokenWords.in(language);
    Map<String, List<Long>> clips = new TreeMap<>();
    VoiceClips.in(language)
        .places()
        .forEach(
            (clip, place) ->
                clips.put(clip, List.of(place.from().toMillis(), place.length().toMillis())));
    Map<String, String> words = new TreeMap<>();
    for (String key : spoken.keys()) {
      if (key.startsWith(PAGE)) {
        words.put(key.substring(PAGE.length()), spoken.word(key));
      }
    }
    return new VoiceView(
        language,
        clips,
        words,
        Sounds.COUNT_IN.notes(),
        Sounds.ALIVE.notes(),
        Sounds.MISHAP.notes(),
        Sounds.ALIVE_EVERY_SECONDS,
        Sounds.LOUD,
        Sounds.SOFT,
        Sounds.EDGE_MILLISECONDS,
        Sounds.WORDS_AFTER_MILLISECONDS);
  }
}
