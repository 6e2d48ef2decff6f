package org.wetside.web.shelf;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Storage;
import org.wetside.web.page.FieldReader;

/**
 * A bottle to put on the shelf.
 *
 * @param letter its own
 * @param contents name of what is in it
 * @param role concentrate, stock, working, replenisher or waste
 * @param bath what it does to film
 * @param fullMl what it holds
 * @param leftMl what is in it; full when not said
 * @param oneShot whether what is taken out is thrown away after use
 * @param mixedOn day, year-month-day
 * @param openedOn day, year-month-day
 * @param note anything else
 * @param dilution how a working solution was made, such as 1+4
 * @param use one-shot, reused or replenished; when said, oneShot does not count
 * @param storage full, stoppered; half full; tank with floating lid; open tray
 * @param batch which batch it comes from
 * @param owner whose it is
 */
public record BottleBody(
    @Nullable String letter,
    @Nullable String contents,
    @Nullable String role,
    @Nullable String bath,
    @Nullable Double fullMl,
    @Nullable Double leftMl,
    @Nullable Boolean oneShot,
    @Nullable String mixedOn,
    @Nullable String openedOn,
    @Nullable String note,
    @Nullable String dilution,
    @Nullable String use,
    @Nullable String storage,
    @Nullable String batch,
    @Nullable String owner) {

  /**
   * What stands on it.
   *
   * @throws BadValueException naming the part and its limit
   */
  public BottleLabel label() {
    return BottleLabel.of(
            required("letter", letter),
            required("contents", contents),
            BottleRole.fromWord(required("role", role)),
            BathKind.fromWord(required("bath", bath)),
            Volume.ofMillilitres(required("fullMl", fullMl)))
        .with(after())
        .with(storage == null ? Storage.FULL : Storage.fromWord(storage))
        .withDilution(dilution == null ? "" : dilution)
        .withBatch(batch == null ? "" : batch)
        .withOwner(owner == null ? "" : owner)
        .withDays(
            Optional.ofNullable(mixedOn).map(FieldReader::day),
            Optional.ofNullable(openedOn).map(FieldReader::day))
        .withNote(note == null ? "" : note);
  }

  private AfterPouring after() {
    if (use != null) {
      return AfterPouring.fromWord(use);
    }
    return Boolean.TRUE.equals(oneShot) ? AfterPouring.ONE_SHOT : AfterPouring.REUSED;
  }

  /** What is in it. */
  public Volume filled() {
    return Optional.ofNullable(leftMl)
        .map(Volume::ofMillilitres)
        .orElseGet(() -> Volume.ofMillilitres(required("fullMl", fullMl)));
  }

  private static <T> T required(String name, @Nullable T value) {
    if (value == null) {
      throw new BadValueException(name, "nothing", "it is needed");
    }
    return value;
  }
}
