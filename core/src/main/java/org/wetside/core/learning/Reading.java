package org.wetside.core.learning;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a judged roll says of one thing, the factor or the exposure index.
 *
 * @param says value and certainty; empty when it says nothing
 * @param words how that came about, or why it says nothing
 * @param byWord whether it rests on what a word is held to be worth, which is a judgement
 */
public record Reading(Optional<RollSeen> says, String words, boolean byWord) {
  private static final String JUDGED = " (what it is worth is a judgement, not read anywhere)";

  /**
   * What it says of ln of the user's factor on the maker's time.
   *
   * <p>A measured contrast g against the expected g₀ at the maker's time, on a series of slope s,
   * says that development was worth (ln g − ln g₀)/s in ln(time); a word says it by its worth. What
   * the roll was developed longer than the maker's time already belongs to the factor.
   */
  public static Reading ofFactor(Judgement roll, LearningRules rules) {
    Developed developed = roll.developed();
    if (developed.lasted().isEmpty()) {
      return nothing("no factor: how long it was developed is not recorded");
    }
    if (developed.makers().isEmpty()) {
      return nothing("no factor: no maker's time to compare with, " + developed.makersSource());
    }
    double already = developed.lnAlready().orElseThrow();
    Optional<ReferencePair> pair = roll.seen().pair();
    if (pair.isPresent() && developed.contrast().isPresent()) {
      ContrastBasis basis = developed.contrast().get();
      double off = Math.log(pair.get().contrast() / basis.expected()) / basis.slope();
      double sd = pair.get().lnContrastSd(rules.densitySd()) / basis.slope();
      return says(roll, already - off, sd, "from the reference pair, " + basis.series(), false);
    }
    String why = pair.isPresent() ? "no factor from the pair: " + developed.whyNoContrast() : "";
    if (roll.seen().contrast().isEmpty()) {
      return nothing(why.isEmpty() ? "no factor: contrast was not judged" : why);
    }
    ContrastWord word = roll.seen().contrast().get();
    LearningRules.Worth worth = rules.worth(word);
    return says(
        roll,
        already + worth.value(),
        worth.sd(),
        "from the word " + word.word() + JUDGED + (why.isEmpty() ? "" : "; " + why),
        true);
  }

  /**
   * What it says of the exposure index, in stops from the index it was exposed at: negative when
   * the film needs more light than its index gives.
   */
  public static Reading ofIndex(Judgement roll, LearningRules rules) {
    if (roll.index().isEmpty()) {
      return nothing("no index: which index it was exposed at is not said");
    }
    Optional<ReferencePair> pair = roll.seen().pair();
    String why = "";
    if (pair.isPresent()) {
      OptionalDouble net = pair.get().netShadow();
      OptionalDouble stops =
          net.isPresent() ? rules.toe().stopsAt(net.getAsDouble()) : OptionalDouble.empty();
      if (stops.isPresent()) {
        double sd = rules.densitySd() * rules.toe().stopsPerDensity(net.getAsDouble());
        return says(roll, stops.getAsDouble(), sd, "from the dark frame of the pair", false);
      }
      why =
          net.isEmpty()
              ? "no index from the pair: base plus fog was not read"
              : "no index from the pair: its dark frame lies outside "
                  + ToeShape.thinnest()
                  + " to 0.30 above clear film, where stops can be told";
    }
    if (roll.seen().shadows().isEmpty()) {
      return nothing(why.isEmpty() ? "no index: shadows were not judged" : why);
    }
    if (roll.seen().edge() != EdgePrint.USUAL) {
      return nothing(
          "no index: shadows speak of exposure only when the edge print is as usual; here it is "
              + roll.seen().edge().word());
    }
    ShadowWord word = roll.seen().shadows().get();
    LearningRules.Worth worth = rules.worth(word);
    return says(
        roll,
        worth.value(),
        worth.sd(),
        "from the word " + word.word() + JUDGED + (why.isEmpty() ? "" : "; " + why),
        true);
  }

  private static Reading nothing(String why) {
    return new Reading(Optional.empty(), why, false);
  }

  private static Reading says(
      Judgement roll, double value, double sd, String words, boolean byWord) {
    return new Reading(
        Optional.of(new RollSeen(roll.roll(), roll.of(), roll.developed().at(), value, sd)),
        words,
        byWord);
  }
}
