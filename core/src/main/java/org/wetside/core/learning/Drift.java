package org.wetside.core.learning;

/** What a roll raises in a control chart; slow: it came out as if developed too short. */
public enum Drift {
  /** Nothing. */
  NONE,
  /** It lies beyond three standard deviations: developed too little. */
  ONE_SLOW,
  /** It lies beyond three standard deviations: developed too much. */
  ONE_FAST,
  /** Two of the last three lie beyond two standard deviations: developed too little. */
  TWO_SLOW,
  /** Two of the last three lie beyond two standard deviations: developed too much. */
  TWO_FAST;

  /** Whether it was developed too little for what was expected. */
  public boolean isSlow() {
    return this == ONE_SLOW || this == TWO_SLOW;
  }

  /** Whether it rests on two of three rolls. */
  public boolean isOfTwo() {
    return this == TWO_SLOW || this == TWO_FAST;
  }
}
