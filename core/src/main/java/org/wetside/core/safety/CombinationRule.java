package org.wetside.core.safety;

import java.util.Set;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * One line of what must not, or should not, meet.
 *
 * @param name of the rule, for example {@code hypochlorite and acid}
 * @param severity whether it is refused or warned of
 * @param meeting how the two meet
 * @param first what the one is: all of these
 * @param second what the other is: all of these; empty when one thing alone matters
 * @param unless what makes it harmless when it is there as well; empty when nothing does
 * @param hazard what happens
 * @param advice what to do instead
 * @param rinse whether a rinse between the two is the way out
 * @param citation where it was read or recalled from
 * @param standing how it is known
 */
public record CombinationRule(
    String name,
    Severity severity,
    Meeting meeting,
    Set<Nature> first,
    Set<Nature> second,
    Set<Nature> unless,
    String hazard,
    String advice,
    boolean rinse,
    Citation citation,
    Standing standing) {

  /** How grave it is. */
  public enum Severity {
    /** Toxic gas, spatter or a ruined bath: not to be done. */
    REFUSED,
    /** Can be done, but should not. */
    WARNED
  }

  /** How two things meet. */
  public enum Meeting {
    /** In one vessel, whichever comes first. */
    TOGETHER("together"),
    /** The first poured into the second. */
    INTO("into"),
    /** On the film, the second straight after the first. */
    IN_TURN("in turn"),
    /** One thing by itself. */
    ALONE("alone");

    private final String word;

    Meeting(String word) {
      this.word = word;
    }

    /** The word in the file. */
    public String word() {
      return word;
    }

    /**
     * Reads {@link #word()} back.
     *
     * @throws IllegalArgumentException for any other word
     */
    public static Meeting fromWord(String word) {
      for (Meeting meeting : values()) {
        if (meeting.word.equals(word)) {
          return meeting;
        }
      }
      throw new IllegalArgumentException("no such way to meet: " + word);
    }
  }

  /** Keeps unmodifiable copies. */
  public CombinationRule {
    first = Set.copyOf(first);
    second = Set.copyOf(second);
    unless = Set.copyOf(unless);
  }
}
