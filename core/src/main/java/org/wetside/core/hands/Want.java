package org.wetside.core.hands;

/** What hands are wanted for. */
public enum Want {
  /** A bath is poured in, or light is put on the film. */
  POUR("is poured"),
  /** The tank is moved. */
  AGITATE("is agitated"),
  /** The bath is drained. */
  DRAIN("drains");

  private final String words;

  Want(String words) {
    this.words = words;
  }

  /** As it is said of a tank: {@code drains}. */
  public String words() {
    return words;
  }
}
