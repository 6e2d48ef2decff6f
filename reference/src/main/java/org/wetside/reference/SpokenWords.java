package org.wetside.reference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetside.core.process.Saying;
import org.wetside.core.process.Speech;
import org.wetside.core.process.Speech.Phrase;
import org.wetside.core.quantity.BadValueException;

/**
 * Everything the program says aloud, in one language: the file {@code voice/<language>.csv}. Turns
 * what a cue says into words and into the names of the clips that say them.
 */
public final class SpokenWords {
  /** The language that is always there. */
  public static final String ENGLISH = "en";

  private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");
  private static final Pattern NOT_SAID = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final int SECONDS_PER_MINUTE = 60;

  private final Map<String, String> words;
  private final NameClips names;

  private SpokenWords(Map<String, String> words) {
    this.words = words;
    names = new NameClips(words);
  }

  /** The words of the language that is always there. */
  public static SpokenWords english() {
    return English.WORDS;
  }

  /**
   * The words of a language.
   *
   * @param language its short name, for example {@code en}
   * @throws BadValueException when it has no file
   */
  public static SpokenWords in(String language) {
    Map<String, String> words = new LinkedHashMap<>();
    try {
      CsvText.read("voice/" + language)
          .lines()
          .forEach(line -> words.put(line.cell("key"), line.cell("words")));
    } catch (IllegalArgumentException missing) {
      throw new BadValueException(
          "language of the voice", language, "there is no file voice/" + language + ".csv");
    }
    return new SpokenWords(words);
  }

  /** The name of the clip that says a text: its letters and digits, in small letters. */
  public static String clipOf(String text) {
    return NOT_SAID.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
  }

  /** A saying in these words, of the only tank at work. */
  public Speech say(Saying saying) {
    return say(saying, List.of());
  }

  /**
   * A saying in these words.
   *
   * @param otherTanks names of the tanks at work beside it, from which it must be told by ear
   */
  public Speech say(Saying saying, Collection<String> otherTanks) {
    List<Phrase> phrases = new ArrayList<>();
    String tank = saying.tank();
    if (!tank.isEmpty()) {
      phrases.addAll(fill(word("called"), Map.of("tank", tank), otherTanks));
    }
    phrases.addAll(fill(word(saying.sentence()), saying.parts()));
    return new Speech(capital(phrases));
  }

  /** What is said for a key that has no places, such as {@code page.server-back}. */
  public String word(String key) {
    String found = words.get(key);
    if (found == null) {
      throw new IllegalArgumentException("the file of spoken words has no " + key);
    }
    return found;
  }

  /** Every text that needs a clip, by the clip's name. */
  public Map<String, String> toBeSpoken() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String entry : words.values()) {
      int from = 0;
      Matcher place = PLACE.matcher(entry);
      while (place.find()) {
        keep(texts, entry.substring(from, place.start()));
        from = place.end();
      }
      keep(texts, entry.substring(from));
    }
    return texts;
  }

  /** The keys of the file. */
  public SortedSet<String> keys() {
    return new TreeSet<>(words.keySet());
  }

  private static void keep(Map<String, String> texts, String text) {
    if (!clipOf(text).isEmpty()) {
      texts.put(clipOf(text), text.strip());
    }
  }

  private List<Phrase> fill(String sentence, Map<String, String> parts) {
    return fill(sentence, parts, List.of());
  }

  private List<Phrase> fill(
      String sentence, Map<String, String> parts, Collection<String> otherTanks) {
    List<Phrase> phrases = new ArrayList<>();
    int from = 0;
    Matcher place = PLACE.matcher(sentence);
    while (place.find()) {
      phrases.add(fixed(sentence.substring(from, place.start())));
      phrases.addAll(placed(place.group(1), parts, otherTanks));
      from = place.end();
    }
    phrases.add(fixed(sentence.substring(from)));
    return phrases.stream().filter(phrase -> !phrase.text().isEmpty()).toList();
  }

  private List<Phrase> placed(
      String place, Map<String, String> parts, Collection<String> otherTanks) {
    if (place.equals("span")) {
      return span(Integer.parseInt(part("seconds", parts)));
    }
    String value = part(place, parts);
    return switch (place) {
      case "bath" -> List.of(fixed(word("bath." + value.replace(' ', '-'))));
      case "count" -> List.of(new Phrase(value, names.number(value)));
      case "letter" -> List.of(new Phrase(value, names.spelt(value)));
      case "tank" -> List.of(new Phrase(value, names.name(value, otherTanks)));
      default -> throw new IllegalArgumentException("no words know the place {" + place + "}");
    };
  }

  private static String part(String place, Map<String, String> parts) {
    String value = parts.get(place);
    if (value == null) {
      throw new IllegalArgumentException("nothing was given for {" + place + "}");
    }
    return value;
  }

  private List<Phrase> span(int seconds) {
    int minutes = seconds / SECONDS_PER_MINUTE;
    int rest = seconds % SECONDS_PER_MINUTE;
    List<Phrase> phrases = new ArrayList<>();
    if (minutes > 0) {
      phrases.addAll(counted("minute", minutes));
    }
    if (rest > 0 || minutes == 0) {
      if (minutes > 0) {
        phrases.add(new Phrase(" ", List.of()));
      }
      phrases.addAll(counted("second", rest));
    }
    return phrases;
  }

  private List<Phrase> counted(String unit, int count) {
    return count == 1
        ? List.of(fixed(word("span-one-" + unit)))
        : fill(word("span-" + unit + "s"), Map.of("count", Integer.toString(count)));
  }

  private static Phrase fixed(String text) {
    String clip = clipOf(text);
    return new Phrase(text, clip.isEmpty() ? List.of() : List.of(clip));
  }

  /** A sentence begins with a capital, whatever its first place was filled with. */
  private static List<Phrase> capital(List<Phrase> phrases) {
    if (phrases.isEmpty() || phrases.get(0).text().isEmpty()) {
      return phrases;
    }
    List<Phrase> sentence = new ArrayList<>(phrases);
    Phrase first = phrases.get(0);
    String text = first.text();
    sentence.set(
        0,
        new Phrase(
            text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1), first.clips()));
    return sentence;
  }

  /** Read when something is first said. */
  private static final class English {
    static final SpokenWords WORDS = in(ENGLISH);
  }
}
