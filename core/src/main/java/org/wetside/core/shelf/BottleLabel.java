package org.wetside.core.shelf;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * What stands on a bottle.
 *
 * @param letter the bottle's own, one to three letters or digits; unique among those on the shelf
 * @param contents name of what is in it, for example {@code D-76}
 * @param role concentrate, stock, working, replenisher or waste
 * @param bath what it does to film
 * @param dilution how a working solution was made, for example {@code 1+4}; may be empty
 * @param full how much it holds when full, above 0
 * @param use what becomes of it after use
 * @param storage how it is kept
 * @param mixedOn the day it was mixed, if it was
 * @param openedOn the day it was first opened, if it was
 * @param batch which batch it comes from; may be empty
 * @param owner whose it is; may be empty
 * @param note anything else; may be empty
 */
public record BottleLabel(
    String letter,
    String contents,
    BottleRole role,
    BathKind bath,
    String dilution,
    Volume full,
    AfterPouring use,
    Storage storage,
    Optional<LocalDate> mixedOn,
    Optional<LocalDate> openedOn,
    String batch,
    String owner,
    String note) {

  public BottleLabel {
    letter = letter.strip().toUpperCase(Locale.ROOT);
    contents = contents.strip();
    dilution = dilution.strip();
    batch = batch.strip();
    owner = owner.strip();
    note = note.strip();
    if (!letter.matches("[\\p{L}\\p{N}]{1,3}")) {
      throw new BadValueException("letter of the bottle", letter, "one to three letters or digits");
    }
    if (contents.isEmpty() || contents.length() > 60) {
      throw new BadValueException("contents of the bottle", contents, "1 to 60 characters");
    }
    if (full.millilitres() <= 0) {
      throw new BadValueException("volume of the bottle", full.toString(), "it must be above 0 mL");
    }
  }

  /** A label with the least that stands on one: reused, full and stoppered, no days. */
  public static BottleLabel of(
      String letter, String contents, BottleRole role, BathKind bath, Volume full) {
    return new BottleLabel(
        letter,
        contents,
        role,
        bath,
        "",
        full,
        AfterPouring.REUSED,
        Storage.FULL,
        Optional.empty(),
        Optional.empty(),
        "",
        "",
        "");
  }

  /** Whether what is taken out is thrown away after use. */
  public boolean oneShot() {
    return use == AfterPouring.ONE_SHOT;
  }

  /** The same with what becomes of it after use. */
  public BottleLabel with(AfterPouring other) {
    return new BottleLabel(
        letter, contents, role, bath, dilution, full, other, storage, mixedOn, openedOn, batch,
        owner, note);
  }

  /** The same kept in another way. */
  public BottleLabel with(Storage other) {
    return new BottleLabel(
        letter, contents, role, bath, dilution, full, use, other, mixedOn, openedOn, batch, owner,
        note);
  }

  /** The same made with that dilution; may be empty. */
  public BottleLabel withDilution(String made) {
    return new BottleLabel(
        letter, contents, role, bath, made, full, use, storage, mixedOn, openedOn, batch, owner,
        note);
  }

  /** The same with its days; empty where there is none. */
  public BottleLabel withDays(Optional<LocalDate> mixed, Optional<LocalDate> opened) {
    return new BottleLabel(
        letter, contents, role, bath, dilution, full, use, storage, mixed, opened, batch, owner,
        note);
  }

  /** The same from that batch. */
  public BottleLabel withBatch(String name) {
    return new BottleLabel(
        letter, contents, role, bath, dilution, full, use, storage, mixedOn, openedOn, name, owner,
        note);
  }

  /** The same of that owner. */
  public BottleLabel withOwner(String name) {
    return new BottleLabel(
        letter, contents, role, bath, dilution, full, use, storage, mixedOn, openedOn, batch, name,
        note);
  }

  /** The same with other words on it. */
  public BottleLabel withNote(String words) {
    return new BottleLabel(
        letter, contents, role, bath, dilution, full, use, storage, mixedOn, openedOn, batch, owner,
        words);
  }

  /** The day its age is counted from: mixed, else opened; empty when neither is known. */
  public Optional<LocalDate> ageFrom() {
    return role == BottleRole.CONCENTRATE ? openedOn.or(() -> mixedOn) : mixedOn.or(() -> openedOn);
  }

  /** For example {@code bottle A, D-76 stock}. */
  public String spoken() {
    return "bottle " + letter + ", " + contents + " " + role.word();
  }
}
