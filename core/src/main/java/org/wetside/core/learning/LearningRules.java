package org.wetside.core.learning;

import java.util.EnumMap;
import java.util.Map;

/**
 * What a word or a density is worth, and how far things scatter: the figures of the reference file
 * of learning.
 *
 * @param time scatter of ln(time)
 * @param index scatter of the exposure index, in stops
 * @param contrast what each word of contrast says of ln of the factor, and how surely
 * @param shadows what each word of shadows says of the exposure index, in stops, and how surely
 * @param densitySd how surely a density is read [-]
 * @param toe from the density of the dark frame to stops
 */
public record LearningRules(
    Scatter time,
    Scatter index,
    Map<ContrastWord, Worth> contrast,
    Map<ShadowWord, Worth> shadows,
    double densitySd,
    ToeShape toe) {
  /**
   * What a word is worth.
   *
   * @param value ln of the factor, or stops
   * @param sd its standard deviation, same unit
   */
  public record Worth(double value, double sd) {}

  /** Every word must have its worth. */
  public LearningRules {
    contrast = new EnumMap<>(contrast);
    shadows = new EnumMap<>(shadows);
    if (contrast.size() < ContrastWord.values().length
        || shadows.size() < ShadowWord.values().length) {
      throw new IllegalArgumentException("a word has no worth: " + contrast + ", " + shadows);
    }
  }

  Worth worth(ContrastWord word) {
    return contrast.getOrDefault(word, new Worth(0, 1));
  }

  Worth worth(ShadowWord word) {
    return shadows.getOrDefault(word, new Worth(0, 1));
  }
}
