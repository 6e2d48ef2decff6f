package org.wetside.app.util;

/**
 * In a package and under a name that say nothing, on purpose: the rule about names must find it.
 */
final class BrokenHelper {
  private BrokenHelper() {}
}
