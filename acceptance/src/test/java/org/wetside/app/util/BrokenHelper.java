package org.wetside.app.util;

/** Named for nothing. */
final class BrokenHelper {
  private BrokenHelper() {}
}
