package org.wetside.core.testroll;

/** Knows a concept that comes after its own. */
final class BrokenOrder {
  private BrokenOrder() {}

  static String name(org.wetside.core.plan.Roll roll) {
    return roll.number();
  }
}
