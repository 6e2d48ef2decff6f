package org.wetside.app.times;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.app.Wetside;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.source.Standing;

/** Times of one's own in a real database. Every time here is invented. */
class OwnTimesTest {
  private static final String HEADER =
      "film,developer,dilution,ei,temp,minutes,vessel,agitation,contrast,source\n";

  private Wetside wetside;

  @BeforeEach
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  private KeepOutcome take(String rows) {
    return wetside.importTimes().from((HEADER + rows).getBytes(StandardCharsets.UTF_8));
  }

  private List<String> problems(String rows) {
    KeepOutcome outcome = take(rows);
    assertThat(outcome).isInstanceOf(KeepOutcome.Refused.class);
    assertThat(wetside.listTimes().inUse()).isEmpty();
    return ((KeepOutcome.Refused) outcome).problems().stream().map(RowProblem::text).toList();
  }

  private TimeAnswer ask(String film, String developer, String dilution, String ei, String temp) {
    return wetside
        .askTime()
        .answer(new TimeRequest(film, developer, dilution, ei, temp, "small", "", "", "", false));
  }

  @Test
  void aTypedLineAnswersItsConditionsForTheCoatingInTheBox() {
    KeepOutcome outcome =
        wetside
            .addTime()
            .add(
                new OwnLine(
                    "T-MAX 400",
                    "D-76",
                    "1+1",
                    "400",
                    "20C",
                    "10:15",
                    "small",
                    "",
                    "",
                    "box 2025"));
    assertThat(outcome).isInstanceOf(KeepOutcome.Kept.class);
    TimeAnswer.Estimate answer =
        (TimeAnswer.Estimate) ask("T-MAX 400", "D-76", "1+1", "400", "20C");
    assertThat(answer.time()).isEqualTo(Duration.ofSeconds(615));
    assertThat(answer.question().film().code()).isEqualTo("TMY-2");
    assertThat(answer.standing()).isEqualTo(Standing.PUBLISHED);
    assertThat(answer.basis().get(0).citation().sourceId()).isEqualTo("box 2025");
  }

  @Test
  void aLineWithoutASourceIsFromMemory() {
    take("Marsh 100,Soup,stock,100,20C,8:00,small,,,\n");
    TimeAnswer.Estimate answer =
        (TimeAnswer.Estimate) ask("marsh100", "soup", "stock", "100", "20C");
    assertThat(answer.standing()).isEqualTo(Standing.FROM_MEMORY);
  }

  @Test
  void exportAndImportGiveTheSameFile(@TempDir Path other) {
    take(
        "T-MAX 400,XTOL,1+1,400,20C,9:15,small,,,\"leaflet, 2025\"\n"
            + "T-MAX 400 (TMY),XTOL,stock,400,68F,6:00-7:30,rotary,continuous,0.58,old leaflet\n"
            + "Marsh 100,Soup,,,,10,,stand,,\n"
            + "TRI-X 400,HC-110,B,1600,21.5C,0:45.5,tray,\"30 s, then 5 s every minute\",,card\n");
    String csv = wetside.exportTimes().csv();
    try (Wetside second = Wetside.open(other, Clock.systemUTC())) {
      KeepOutcome taken = second.importTimes().from(csv.getBytes(StandardCharsets.UTF_8));
      assertThat(taken).isInstanceOf(KeepOutcome.Kept.class);
      assertThat(((KeepOutcome.Kept) taken).entries()).hasSize(4);
      assertThat(second.exportTimes().csv()).isEqualTo(csv);
    }
    assertThat(csv)
        .contains("T-MAX 400 Professional (TMY)", "6:00-7:30", "68F", "\"leaflet, 2025\"");
  }

  @Test
  void takingTheSameFileInTwiceKeepsItOnce() {
    String row = "T-MAX 400,XTOL,1+1,400,20C,9:15,small,,,leaflet\n";
    take(row);
    KeepOutcome.Kept again = (KeepOutcome.Kept) take(row);
    assertThat(again.entries()).isEmpty();
    assertThat(again.alreadyThere()).isEqualTo(1);
    assertThat(wetside.listTimes().inUse()).hasSize(1);
    KeepOutcome.Refused other =
        (KeepOutcome.Refused) take("T-MAX 400,XTOL,1+1,400,20C,9:30,small,,,leaflet\n");
    assertThat(other.problems().get(0).text()).contains("row 2", "9:15", "own-1");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "X,Y,stock,100,20,9:00,small,,,s | row 2, temp | unit",
        "X,Y,stock,100,20K,9:00,small,,,s | row 2, temp | C or F",
        "X,Y,stock,100,70C,9:00,small,,,s | row 2, temp | between 5 and 60",
        "X,Y,1:9,100,20C,9:00,small,,,s | row 2, dilution | 1+9",
        "X,Y,stock,100,20C,\"9,5\",small,,,s | row 2, minutes | decimal mark",
        "X,Y,stock,100,20C,0,small,,,s | row 2, minutes | more than 0",
        "X,Y,stock,100,20C,9:75,small,,,s | row 2, minutes | 59",
        "X,Y,stock,100,20C,9-7,small,,,s | row 2, minutes | longer",
        "X,Y,stock,100,20C,,small,,,s | row 2, minutes | 9:45",
        "X,Y,stock,-3,20C,9:00,small,,,s | row 2, ei | more than 0",
        "X,Y,stock,100,20C,9:00,bucket,,,s | row 2, vessel | rotary",
        "X,Y,stock,100,20C,9:00,small,wild,,s | row 2, agitation | semi-stand",
        ",Y,stock,100,20C,9:00,small,,,s | row 2, film | say which",
        "T-MAX,Y,stock,100,20C,9:00,small,,,s | row 2, film | T-MAX 100",
        "X,Y,stock,100,20C,9:00,small | row 2 | has 7 cells where 10 belong",
        "X,Y,stock,100,20C,9:00,small,,,s,t | row 2 | quotation marks",
      })
  void aBadRowIsNamedAndNothingIsKept(String row, String where, String what) {
    List<String> found = problems(row + "\n");
    assertThat(found).singleElement().asString().startsWith(where).contains(what);
  }

  @Test
  void everyBadRowIsNamedAtOnce() {
    assertThat(
            problems(
                "Good,Soup,stock,100,20C,9:00,small,,,s\n"
                    + "X,Y,stock,100,20,9:00,small,,,s\n"
                    + "Good,Soup,stock,100,20C,9:30,small,,,s\n"
                    + "X,Y,stock,100\n"))
        .hasSize(3)
        .satisfiesExactly(
            first -> assertThat(first).startsWith("row 3, temp"),
            second -> assertThat(second).startsWith("row 4").contains("row 2 already"),
            third -> assertThat(third).startsWith("row 5").contains("4 cells"));
  }

  @Test
  void filesThatAreNoSuchFileAreRefusedWithTheirOwnMessage() {
    assertThatThrownBy(() -> wetside.importTimes().from(bytes("film;developer\nX;Y\n")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("semicolons");
    assertThatThrownBy(() -> wetside.importTimes().from(bytes("name,time\nX,9:00\n")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("name,time")
        .hasMessageContaining("film,developer,dilution");
    assertThatThrownBy(() -> wetside.importTimes().from(bytes("")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("empty");
    assertThatThrownBy(() -> wetside.importTimes().from(HEADER.getBytes(StandardCharsets.UTF_16)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("UTF-8");
    assertThatThrownBy(() -> wetside.importTimes().from(new byte[] {'f', (byte) 0xE9, 'x'}))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("UTF-8");
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    KeepOutcome outcome =
        wetside.importTimes().from(bytes("\uFEFF" + HEADER + "X,Y,stock,100,20C,9:00,small,,,s\n"));
    assertThat(outcome).isInstanceOf(KeepOutcome.Kept.class);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void aLeafletIsKeptCellByCellOrNotAtAll() {
    OwnLine common =
        new OwnLine("TRI-X 400", "XTOL", "", "400", "", "", "small", "", "", "leaflet 2025");
    TypeLeaflet.Leaflet good =
        new TypeLeaflet.Leaflet(
            common,
            TypeLeaflet.Down.DILUTIONS,
            List.of("65F", "68F"),
            List.of(
                new TypeLeaflet.Row("stock", List.of("7:45", "6:30")),
                new TypeLeaflet.Row("1+1", List.of("", "9:15")),
                new TypeLeaflet.Row("", List.of("", ""))));
    assertThat(((KeepOutcome.Kept) wetside.typeLeaflet().keep(good)).entries()).hasSize(3);
    TypeLeaflet.Leaflet bad =
        new TypeLeaflet.Leaflet(
            common,
            TypeLeaflet.Down.DILUTIONS,
            List.of("65", "68F"),
            List.of(new TypeLeaflet.Row("1:3", List.of("7:45", "6.30.1"))));
    assertThat(((KeepOutcome.Refused) wetside.typeLeaflet().keep(bad)).problems())
        .extracting(RowProblem::column)
        .contains("temp-0", "head-0", "minutes-0-1");
    assertThat(wetside.listTimes().inUse()).hasSize(3);
  }

  @Test
  void indexesMayStandDownTheSide() {
    TypeLeaflet.Leaflet leaflet =
        new TypeLeaflet.Leaflet(
            new OwnLine("TRI-X 400", "XTOL", "1+2", "", "", "", "small", "", "", "card"),
            TypeLeaflet.Down.INDEXES,
            List.of("20C"),
            List.of(
                new TypeLeaflet.Row("400", List.of("11:00")),
                new TypeLeaflet.Row("1600", List.of("16:00"))));
    wetside.typeLeaflet().keep(leaflet);
    TimeAnswer.Estimate answer =
        (TimeAnswer.Estimate) ask("TRI-X 400", "XTOL", "1+2", "1600", "20C");
    assertThat(answer.time()).isEqualTo(Duration.ofMinutes(16));
  }

  @Test
  void aWithdrawnTimeIsUsedNoMore() {
    take("T-MAX 400,D-76,stock,400,68F,6:00,small,,,leaflet\n");
    wetside.withdrawTime().withdraw("own-1");
    assertThat(wetside.listTimes().inUse()).isEmpty();
    TimeAnswer.Estimate answer =
        (TimeAnswer.Estimate) ask("T-MAX 400", "D-76", "stock", "400", "68F");
    assertThat(answer.question().film().code()).isEqualTo("TMY");
    assertThatThrownBy(() -> wetside.withdrawTime().withdraw("own-1"))
        .isInstanceOf(BadValueException.class);
    assertThatThrownBy(() -> wetside.withdrawTime().withdraw("x"))
        .isInstanceOf(BadValueException.class);
  }

  @Test
  void sourcesThatDisagreeAreBothShown() {
    take("TRI-X 400,D-76,stock,400,68F,9:00,small,,,another leaflet\n");
    TimeAnswer.Estimate answer =
        (TimeAnswer.Estimate) ask("TRI-X 400", "D-76", "stock", "400", "68F");
    assertThat(answer.time()).isEqualTo(Duration.ofMinutes(9));
    assertThat(answer.disagreements())
        .anySatisfy(other -> assertThat(other.time()).isEqualTo(Duration.ofSeconds(405)));
  }

  @Test
  void aTimeForOneWayOfAgitatingDoesNotAnswerForAnother() {
    take("Marsh 100,Soup,1+100,100,20C,60,small,stand,,s\n");
    assertThat(ask("Marsh 100", "Soup", "1+100", "100", "20C"))
        .isInstanceOf(TimeAnswer.NoHonestTime.class);
  }

  @ParameterizedTest
  @CsvSource({
    "'', D-76, stock, 400, 20C, film",
    "T-MAX, D-76, stock, 400, 20C, T-MAX 100",
    "Nonesuch, D-76, stock, 400, 20C, nearest",
    "TRI-X 400, Soup, stock, 400, 20C, developer",
    "TRI-X 400, D-76, '', 400, 20C, stock",
    "TRI-X 400, D-76, 1:1, 400, 20C, 1+1",
    "TRI-X 400, D-76, stock, '', 20C, exposure index",
    "TRI-X 400, D-76, stock, many, 20C, exposure index",
    "TRI-X 400, D-76, stock, 400, 20, unit",
    "TRI-X 400, D-76, stock, 400, '', temperature"
  })
  void aQuestionThatCannotBeUnderstoodSaysWhatIsMissing(
      String film, String developer, String dilution, String ei, String temp, String says) {
    assertThatThrownBy(() -> ask(film, developer, dilution, ei, temp))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining(says);
  }
}
