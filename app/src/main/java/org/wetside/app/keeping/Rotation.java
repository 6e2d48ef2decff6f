package org.wetside.app.keeping;

import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which daily backups are kept: the seven newest, and before those the newest of each of the last
 * four weeks that have one. Counted by what there is, not by age, so that somebody who develops
 * once a month never loses the last copy to the calendar.
 */
final class Rotation {
  /** Newest ones kept, one a day. */
  static final int DAYS = 7;

  /** Older ones kept, one a week from Monday to Sunday. */
  static final int WEEKS = 4;

  private Rotation() {}

  /** Those that may go. */
  static List<LocalDate> over(Collection<LocalDate> days) {
    List<LocalDate> newestFirst = new ArrayList<>(new HashSet<>(days));
    newestFirst.sort(Comparator.reverseOrder());
    List<LocalDate> over = new ArrayList<>();
    Set<Integer> weeks = new HashSet<>();
    for (int i = DAYS; i < newestFirst.size(); i++) {
      LocalDate day = newestFirst.get(i);
      if (weeks.contains(week(day)) || weeks.size() == WEEKS) {
        over.add(day);
      } else {
        weeks.add(week(day));
      }
    }
    return over;
  }

  private static int week(LocalDate day) {
    return day.get(IsoFields.WEEK_BASED_YEAR) * 100 + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
  }
}
