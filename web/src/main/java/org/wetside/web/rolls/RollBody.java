package org.wetside.web.rolls;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.plan.FilmKind;
import org.wetside.core.plan.FilmSize;
import org.wetside.core.plan.RollDraft;
import org.wetside.core.plan.RollLine;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.ExposureIndex;

/**
 * A roll as JSON. What is absent is not said; in a change it stays as it was.
 *
 * @param number own number
 * @param format 135, 120, 220, 4x5, 5x7, 8x10
 * @param frames frames or sheets
 * @param film as written
 * @param filmCode film chosen of several that may be meant; only in a change
 * @param kind b/w, C-41, E-6
 * @param ei exposure index
 * @param title what is on it
 * @param precious whether it must not fail
 * @param exposedOn year-month-day
 * @param note anything else
 * @param owner whose it is
 * @param sleeve files its negatives there; only in a change
 * @param withdrawn takes it out of the drawer, or puts it back; only in a change
 */
record RollBody(
    @Nullable String number,
    @Nullable String format,
    @Nullable Integer frames,
    @Nullable String film,
    @Nullable String filmCode,
    @Nullable String kind,
    @Nullable Double ei,
    @Nullable String title,
    @Nullable Boolean precious,
    @Nullable String exposedOn,
    @Nullable String note,
    @Nullable String owner,
    @Nullable String sleeve,
    @Nullable Boolean withdrawn) {
  RollDraft draft() {
    if (filmCode != null || sleeve != null || withdrawn != null) {
      throw new BadValueException(
          "roll",
          film == null ? "" : film,
          "filmCode, sleeve and withdrawn belong to a change of a roll that is there");
    }
    return new RollDraft(
        Optional.ofNullable(number),
        FilmSize.parse(format == null ? "" : format),
        Optional.ofNullable(frames),
        film == null ? "" : film,
        kind == null ? FilmKind.BLACK_AND_WHITE : FilmKind.parse(kind),
        Optional.ofNullable(ei).map(ExposureIndex::of),
        title == null ? "" : title,
        precious != null && precious,
        Optional.ofNullable(exposedOn).map(RollLine::day),
        note == null ? "" : note,
        owner == null ? "" : owner);
  }

  /** Whether it says anything of the roll itself. */
  boolean describes() {
    return number != null
        || format != null
        || frames != null
        || film != null
        || filmCode != null
        || kind != null
        || ei != null
        || title != null
        || precious != null
        || exposedOn != null
        || note != null
        || owner != null;
  }

  /** The roll with what is said here, the rest as it was. */
  RollDraft over(RollDraft was) {
    return new RollDraft(
        number == null ? was.number() : Optional.of(number),
        format == null ? was.size() : FilmSize.parse(format),
        frames == null ? was.frames() : Optional.of(frames),
        film == null ? was.film() : film,
        kind == null ? was.kind() : FilmKind.parse(kind),
        ei == null ? was.exposureIndex() : Optional.of(ExposureIndex.of(ei)),
        title == null ? was.title() : title,
        precious == null ? was.precious() : precious,
        exposedOn == null ? was.exposedOn() : Optional.of(exposedOn).map(RollLine::day),
        note == null ? was.note() : note,
        owner == null ? was.owner() : owner);
  }
}
