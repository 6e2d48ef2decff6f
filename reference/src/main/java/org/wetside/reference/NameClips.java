package org.wetside.reference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The clips that say what nobody could record beforehand: numbers, letters and given names. */
final class NameClips {
  private static final Pattern BORDER =
      Pattern.compile(" |(?<=[0-9])(?=[^0-9 ])|(?<=[^0-9 ])(?=[0-9])");

  private static final Pattern DIGITS = Pattern.compile("[0-9]+");

  private final Map<String, String> words;

  NameClips(Map<String, String> words) {
    this.words = words;
  }

  /** A number that has no clip of its own is said digit by digit. */
  List<String> number(String digits) {
    return known("number." + digits)
        .map(List::of)
        .orElseGet(
            () ->
                digits
                    .chars()
                    .mapToObj(digit -> SpokenWords.clipOf(Character.toString(digit)))
                    .toList());
  }

  /** Letter by letter; what has no clip stays unsaid. */
  List<String> spelt(String letters) {
    return letters
        .toUpperCase(Locale.ROOT)
        .codePoints()
        .mapToObj(Character::toString)
        .map(one -> known("letter." + one).or(() -> known("number." + one)))
        .flatMap(Optional::stream)
        .toList();
  }

  /**
   * A name that somebody gave: word by word where the words are known; of a word that no clip says,
   * its first letter. Where one of the others would sound the same, such words are spelt; where
   * that tells nothing apart either, a number follows, in the order of the names.
   *
   * @param others names that may be heard beside it; itself among them does not count
   */
  List<String> name(String given, Collection<String> others) {
    List<String> brief = said(given, word -> word.substring(0, 1));
    if (alike(given, others, word -> word.substring(0, 1)).isEmpty()) {
      return brief;
    }
    List<String> whole = said(given, word -> word);
    List<String> still = alike(given, others, word -> word);
    if (still.isEmpty()) {
      return whole;
    }
    long place = 1 + still.stream().filter(other -> other.compareTo(given) < 0).count();
    return Stream.concat(whole.stream(), number(Long.toString(place)).stream()).toList();
  }

  private List<String> alike(
      String given, Collection<String> others, UnaryOperator<String> ofUnknown) {
    List<String> clips = said(given, ofUnknown);
    return others.stream()
        .filter(other -> !other.equals(given))
        .filter(other -> said(other, ofUnknown).equals(clips))
        .toList();
  }

  private List<String> said(String name, UnaryOperator<String> ofUnknown) {
    List<String> clips = new ArrayList<>();
    for (String word : BORDER.split(SpokenWords.clipOf(name), -1)) {
      Optional<String> clip = known("name." + word);
      if (clip.isPresent()) {
        clips.add(clip.get());
      } else if (DIGITS.matcher(word).matches()) {
        clips.addAll(number(word));
      } else if (!word.isEmpty()) {
        clips.addAll(spelt(ofUnknown.apply(word)));
      }
    }
    return clips;
  }

  private Optional<String> known(String key) {
    return Optional.ofNullable(words.get(key)).map(SpokenWords::clipOf);
  }
}
