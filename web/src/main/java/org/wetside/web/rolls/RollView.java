package org.wetside.web.rolls;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.development.Film;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollDraft;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.web.trial.FilmTestView;

/**
 * A roll.
 *
 * @param number what it is filed under
 * @param state waiting, loaded, processed, filed, withdrawn
 * @param format 135, 120, 220, 4x5, 5x7, 8x10
 * @param frames frames or sheets; null when not said
 * @param film as typed
 * @param filmCode code in the catalogue; null when it is not known, or several may be meant
 * @param mayBe films that may be meant, each as it can be written; empty when it is decided
 * @param kind b/w, C-41, E-6
 * @param ei exposure index; null when not said
 * @param title what is on it
 * @param precious whether it must not fail
 * @param exposedOn day of exposure; null when not said
 * @param addedAt when it was put into the drawer
 * @param processedAt when it was hung; null before
 * @param sleeve where its negatives are kept
 * @param note anything else
 * @param owner whose it is; may be empty
 * @param tests of its washing, and of its fixers since, the newest first; only where one roll is
 *     asked for
 * @param runs what was done to it, the last first; only where one roll is asked for
 */
public record RollView(
    String number,
    String state,
    String format,
    @Nullable Integer frames,
    String film,
    @Nullable String filmCode,
    List<String> mayBe,
    String kind,
    @Nullable Double ei,
    String title,
    boolean precious,
    @Nullable String exposedOn,
    String addedAt,
    @Nullable String processedAt,
    String sleeve,
    String note,
    String owner,
    List<FilmTestView> tests,
    List<RunView> runs) {
  /** The view of a roll. */
  public static RollView of(
      Wetside wetside, Roll roll, List<FilmTestView> tests, List<RunView> runs) {
    RollDraft said = roll.described();
    List<Film> films =
        roll.filmCode().isPresent() ? List.of() : wetside.findFilm().candidates(said.film());
    return new RollView(
        roll.number(),
        roll.state().word(),
        said.size().word(),
        said.frames().orElse(null),
        said.film(),
        roll.filmCode().orElse(null),
        films.stream().map(Film::label).toList(),
        said.kind().word(),
        said.exposureIndex().map(ExposureIndex::isoArithmetic).orElse(null),
        said.title(),
        said.precious(),
        said.exposedOn().map(Object::toString).orElse(null),
        roll.addedAt().toString(),
        roll.processedAt().map(Object::toString).orElse(null),
        roll.state().isDeveloped() ? wetside.findRolls().sleeve(roll.number()) : "",
        said.note(),
        said.owner(),
        tests,
        runs);
  }
}
