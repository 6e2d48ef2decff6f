package org.wetside.app.picture;

/**
 * What a file says of how its values follow the light.
 *
 * @param kind in one word
 * @param says where it says so, as part of a sentence
 */
public record Encoding(Kind kind, String says) {
  /** In one word. */
  public enum Kind {
    /** It says nothing: whoever made it must. */
    SILENT,
    /** It says that its values are proportional to the light. */
    LINEAR,
    /** It says that they are not. */
    CURVED
  }

  static Encoding silent() {
    return new Encoding(Kind.SILENT, "the file says nothing of how its values follow the light");
  }

  /** The one that weighs more: curved before linear before silent. */
  Encoding or(Encoding other) {
    return kind.compareTo(other.kind) >= 0 ? this : other;
  }
}
