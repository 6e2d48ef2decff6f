package org.wetside.core.testroll;

/**
 * The marks of one dial that lie whole stops from a given mark, within the dial's ends.
 *
 * @param first fewest thirds of a stop
 * @param last most thirds of a stop, whole stops from the first
 */
record DialMarks(int first, int last) {
  private static final int THIRDS = 3;

  static DialMarks wholeStopsFrom(int mark, int least, int most) {
    return new DialMarks(
        least + Math.floorMod(mark - least, THIRDS), most - Math.floorMod(most - mark, THIRDS));
  }

  boolean isEmpty() {
    return last < first;
  }

  /** The mark nearest to a wish that lies whole stops from all of them. */
  int nearest(int wish) {
    return Math.max(first, Math.min(last, wish));
  }
}
