package org.wetside.web.rolls;

import java.time.LocalDate;
import java.util.List;
import org.wetside.app.Wetside;
import org.wetside.core.development.Film;
import org.wetside.core.plan.FilmKind;
import org.wetside.core.plan.FilmSize;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollDraft;
import org.wetside.core.plan.RollState;

/**
 * A roll as a line of a page.
 *
 * @param number what it is filed under
 * @param film film and index
 * @param about size, kind and what else is to be known
 * @param title what is on it; may be empty
 * @param owner whose it is; may be empty
 * @param precious whether it must not fail
 * @param state word of its state
 * @param age how long ago it was exposed, put in, or hung
 * @param since that day
 * @param mayBe films that may be meant; empty when it is decided
 */
public record RollRow(
    String number,
    String film,
    String about,
    String title,
    String owner,
    boolean precious,
    String state,
    String age,
    String since,
    List<String> mayBe) {
  /** Lines of these rolls, in their order. */
  public static List<RollRow> of(Wetside wetside, List<Roll> rolls) {
    Days days = Days.of(wetside.clock());
    return rolls.stream().map(roll -> of(wetside, days, roll)).toList();
  }

  private static RollRow of(Wetside wetside, Days days, Roll roll) {
    RollDraft said = roll.described();
    LocalDate since = since(roll);
    boolean open = roll.filmCode().isEmpty() && roll.state() == RollState.WAITING;
    return new RollRow(
        roll.number(),
        roll.filmAndIndex(),
        about(said),
        said.title(),
        said.owner(),
        said.precious(),
        roll.state().word(),
        days.age(since),
        days.day(since),
        open
            ? wetside.findFilm().candidates(said.film()).stream().map(Film::label).toList()
            : List.of());
  }

  private static LocalDate since(Roll roll) {
    return roll.processedAt()
        .map(Days::dayOf)
        .or(() -> roll.described().exposedOn())
        .orElseGet(() -> Days.dayOf(roll.addedAt()));
  }

  private static String about(RollDraft said) {
    boolean sheets = said.size().compareTo(FilmSize.SHEET_4X5) >= 0;
    String size =
        said.size().word()
            + said.frames()
                .map(count -> sheets ? ", " + Days.count(count, "sheet") : "-" + count)
                .orElse("");
    String kind = said.kind() == FilmKind.BLACK_AND_WHITE ? "" : ", " + said.kind().word();
    return size + kind + (said.exposureIndex().isEmpty() ? ", index not said" : "");
  }

  /** Its page while it waits or is loaded, its record once it is developed. */
  public String path() {
    boolean developed =
        state.equals(RollState.PROCESSED.word()) || state.equals(RollState.FILED.word());
    return (developed ? "/negatives/" : "/drawer/") + number;
  }
}
