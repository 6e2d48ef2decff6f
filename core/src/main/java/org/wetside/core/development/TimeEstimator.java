package org.wetside.core.development;

/**
 * The front door: answers a {@link TimeQuestion} from the entries and evidence of a {@link
 * TimeLibrary}.
 */
public final class TimeEstimator {
  private final TimeLibrary library;

  /** Over this library; holds no other state. */
  public TimeEstimator(TimeLibrary library) {
    this.library = library;
  }

  /** The library it answers from. */
  public TimeLibrary library() {
    return library;
  }
}
