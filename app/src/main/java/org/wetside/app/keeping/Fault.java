package org.wetside.app.keeping;

/**
 * Something stored that is not as it must be.
 *
 * @param where the thing, for example {@code run 3} or {@code bottle F}
 * @param what what is wrong with it, as a sentence without its subject
 */
public record Fault(String where, String what) {
  @Override
  public String toString() {
    return where + ": " + what;
  }
}
