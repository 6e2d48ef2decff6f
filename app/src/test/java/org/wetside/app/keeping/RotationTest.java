package org.wetside.app.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RotationTest {
  private static final LocalDate FIRST = LocalDate.parse("2026-01-01");

  /** What is left when somebody has a backup made every so many days. */
  private static List<LocalDate> keptAfter(int days, int every) {
    List<LocalDate> kept = new ArrayList<>();
    for (int i = 0; i < days; i += every) {
      kept.add(FIRST.plusDays(i));
      kept.removeAll(Rotation.over(kept));
    }
    return kept;
  }

  @Test
  void everyDaySevenDaysAndFourSundaysAreKept() {
    // 2026-06-10 is a Wednesday, the 160th day after the first.
    List<LocalDate> kept = keptAfter(161, 1);
    assertThat(kept)
        .containsExactly(
            LocalDate.parse("2026-05-17"),
            LocalDate.parse("2026-05-24"),
            LocalDate.parse("2026-05-31"),
            LocalDate.parse("2026-06-03"),
            LocalDate.parse("2026-06-04"),
            LocalDate.parse("2026-06-05"),
            LocalDate.parse("2026-06-06"),
            LocalDate.parse("2026-06-07"),
            LocalDate.parse("2026-06-08"),
            LocalDate.parse("2026-06-09"),
            LocalDate.parse("2026-06-10"));
  }

  @Test
  void onceAMonthElevenMonthsAreKept() {
    assertThat(keptAfter(30 * 24, 30)).hasSize(Rotation.DAYS + Rotation.WEEKS);
  }

  @Test
  void theNewestIsNeverLetGo() {
    for (int every = 1; every < 40; every++) {
      List<LocalDate> kept = keptAfter(400, every);
      assertThat(kept).as("every %s days", every).contains(FIRST.plusDays(399L / every * every));
      assertThat(kept).hasSizeLessThanOrEqualTo(Rotation.DAYS + Rotation.WEEKS);
    }
  }

  @Test
  void weeksOfTwoYearsAreTwoWeeks() {
    List<LocalDate> days = new ArrayList<>();
    for (int i = 0; i < Rotation.DAYS; i++) {
      days.add(LocalDate.parse("2027-03-01").plusDays(i));
    }
    days.add(LocalDate.parse("2027-01-06"));
    days.add(LocalDate.parse("2026-01-01"));
    assertThat(Rotation.over(days)).isEmpty();
  }
}
