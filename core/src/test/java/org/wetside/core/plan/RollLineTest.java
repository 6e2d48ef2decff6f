package org.wetside.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.quantity.BadValueException;

class RollLineTest {
  /** One row per case: line | number | size | frames | film | index | title | precious. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      textBlock =
          """
          135 36 T-MAX 400 @800 "harbour"      |       | 135  | 36 | T-MAX 400  | 800 | harbour | false
          TM-01 135 36 TRI-X @400 “sluice”     | TM-01 | 135  | 36 | TRI-X      | 400 | sluice  | false
          120 TRI-X 400                        |       | 120  |    | TRI-X 400  |     |         | false
          26-031 4x5 6 T-MAX 100 @100          | 26-031| 4x5  | 6  | T-MAX 100  | 100 |         | false
          135 400TX @1600 precious             |       | 135  |    | 400TX      | 1600|         | true
          35mm 24 P30 @80 "mill, east side"    |       | 135  | 24 | P30        | 80  | mill, east side | false
          """)
  void readsALine(
      String line,
      String number,
      String size,
      Integer frames,
      String film,
      String index,
      String title,
      boolean precious) {
    RollDraft roll = RollLine.parse(line);
    assertThat(roll.number()).isEqualTo(Optional.ofNullable(number));
    assertThat(roll.size().word()).isEqualTo(size);
    assertThat(roll.frames()).isEqualTo(Optional.ofNullable(frames));
    assertThat(roll.film()).isEqualTo(film);
    assertThat(roll.exposureIndex().map(ei -> ei.toString()))
        .isEqualTo(Optional.ofNullable(index).map(ei -> "EI " + ei));
    assertThat(roll.title()).isEqualTo(title == null ? "" : title);
    assertThat(roll.precious()).isEqualTo(precious);
  }

  @Test
  void readsTheDayAndTheKindOfChemistry() {
    RollDraft roll = RollLine.parse("135 36 GOLD 200 C-41 @200 on 2026-01-09");
    assertThat(roll.exposedOn()).contains(LocalDate.of(2026, 1, 9));
    assertThat(roll.kind()).isEqualTo(FilmKind.COLOUR_NEGATIVE);
    assertThat(roll.film()).isEqualTo("GOLD 200");
  }

  @Test
  void readsWhoseItIsAndLeavesATitleAlone() {
    RollDraft roll =
        RollLine.parse("TM-01 120 TRI-X 400 @400 \"gate of the mill\" of Anna precious");
    assertThat(roll.owner()).isEqualTo("Anna");
    assertThat(roll.title()).isEqualTo("gate of the mill");
    assertThat(roll.film()).isEqualTo("TRI-X 400");
    assertThat(roll.precious()).isTrue();
    assertThat(RollLine.parse("120 TRI-X 400").owner()).isEmpty();
    assertThatThrownBy(() -> roll.withOwner("x".repeat(81)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("owner of a roll")
        .hasMessageContaining("at most 80 characters");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      textBlock =
          """
          TRI-X @400               | "TRI-X"   | 135, 120, 220, 4x5, 5x7, 8x10 first
          135                      | "135"     | the film is missing
          135 36                   | "135 36"  | the film is missing
          135 99 TRI-X             | "99"      | 135 takes 1 to 72
          135 36 TRI-X @0          | "0        | more than 0
          135 36 TRI-X @fast       | "fast"    | write a number
          135 36 TRI-X @400 @800   | @400 @800 | only one @index
          135 36 TRI-X "harbour    | "harbour  | one quotation mark before and one after
          135 36 TRI-X on 2026-2-31| 2026-2-31 | year-month-day
          """)
  void saysWhatIsWrongAndWhatWouldBeRight(String line, String given, String limit) {
    assertThatThrownBy(() -> RollLine.parse(line))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining(given)
        .hasMessageContaining(limit);
  }

  @Test
  void aBatchWithOneBadLineTakesNothingAndNamesTheLine() {
    RollBatch batch =
        RollBatch.parse(
            "135 36 TRI-X @400\n\n# comment\nTRI-X\ntm-01 120 TRI-X\n", Set.of("TM-01"));
    assertThat(batch).isInstanceOf(RollBatch.Refused.class);
    assertThat(((RollBatch.Refused) batch).lines())
        .extracting(RollBatch.BadLine::number)
        .containsExactly(4, 5);
    assertThat(((RollBatch.Refused) batch).lines().get(1).reason())
        .contains("tm-01")
        .contains("already a roll");
  }

  @Test
  void aGoodBatchKeepsTheOrder() {
    RollBatch batch = RollBatch.parse("A-1 135 TRI-X\nA-2 120 TRI-X\n", Set.of());
    assertThat(((RollBatch.Good) batch).drafts())
        .extracting(draft -> draft.number().orElseThrow())
        .containsExactly("A-1", "A-2");
  }

  @Test
  void numbersAreGivenByYearAfterTheHighest() {
    assertThat(RollNumber.next(2026, Set.of("26-001", "26-031", "25-099", "TM-40")))
        .isEqualTo("26-032");
    assertThat(RollNumber.next(2027, Set.of("26-031"))).isEqualTo("27-001");
  }
}
