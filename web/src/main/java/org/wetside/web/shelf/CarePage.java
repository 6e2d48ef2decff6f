package org.wetside.web.shelf;

import java.util.List;
import java.util.Optional;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page about replenishing a developer, and its times by roll number.
 *
 * @param sheet the sheet
 * @param letter the bottle's
 * @param contents what is in it
 * @param since film since it was replenished last, in words
 * @param total replenisher in all, in words; empty when no rate is known
 * @param rate where the rate stands; empty likewise
 * @param most the most that is added at once, in words and with its source
 * @param parts one after the other; empty when nothing is to be added
 * @param waste what stays in the jug for good, in words
 * @param tables makers' tables of times by roll number
 * @param cautions for taking out and adding
 * @param form what was typed
 */
public record CarePage(
    Sheet sheet,
    String letter,
    String contents,
    String since,
    Optional<String> total,
    String rate,
    String most,
    List<Part> parts,
    String waste,
    List<Table> tables,
    List<CautionView> cautions,
    FilledForm form) {
  /**
   * One part of replenishing, each volume in words.
   *
   * @param number from 1
   * @param out taken out into the jug
   * @param add replenisher added
   * @param back returned from the jug, to the mark; empty when nothing is
   * @param then what is in the bottle afterwards, or that it is the mark
   * @param done whether it was ticked
   */
  public record Part(int number, String out, String add, String back, String then, boolean done) {}

  /**
   * A maker's table.
   *
   * @param film film, format and index it is for
   * @param volume of the bath it is for
   * @param next which roll comes next, counted for that volume
   * @param time its time; empty when the table has ended
   * @param last the last roll it has a time for
   * @param rows its rows
   * @param source where it stands, and how it is known
   */
  public record Table(
      String film,
      String volume,
      int next,
      Optional<String> time,
      int last,
      List<Row> rows,
      String source) {}

  /**
   * A row of a table.
   *
   * @param rolls for example {@code 5 to 7}
   * @param time minutes and seconds; empty where none is printed
   * @param next whether the next roll is one of these
   */
  public record Row(String rolls, Optional<String> time, boolean next) {}

  /** Where this page is. */
  public String address() {
    return "/shelf/" + letter + "/care";
  }
}
