package org.wetside.app.density;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.DensityScale;
import org.wetside.core.instrument.PatchDensity;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.sensitometry.NegativeKind;
import org.wetside.store.Database;

/** Turns what was measured into densities, by the newest calibration of an instrument. */
public final class ConvertPatches {
  /** More cut-off pixels than this share of a patch would move its mean: a judgement. */
  private static final double MOST_CLIPPED = 0.001;

  private final Supplier<Database> database;

  ConvertPatches(Supplier<Database> database) {
    this.database = database;
  }

  /**
   * The densities.
   *
   * @throws BadValueException for a stained or colour negative, an instrument that is unknown, was
   *     never calibrated, or shows densities itself, or one that was calibrated in another channel;
   *     about "flare" when it cannot be found from the patch that was named
   */
  public PatchDensities of(List<MeasuredPatch> patches, ConvertWish wish) {
    KnownInstrument known =
        new KeepInstruments(database)
            .find(wish.instrument())
            .orElseThrow(
                () ->
                    new BadValueException(
                        "instrument", wish.instrument(), "there is none of that name"));
    if (!known.instrument().kind().seesPixels()) {
      throw new BadValueException(
          "instrument",
          known.instrument().name(),
          "a densitometer shows densities; type them among the readings");
    }
    Calibration calibration =
        known
            .newest()
            .orElseThrow(
                () ->
                    new BadValueException(
                        "instrument", known.instrument().name(), "calibrate it by a tablet first"));
    DensityScale scale = calibration.scale();
    List<PatchDensities.Patch> read =
        patches.stream()
            .map(one -> new PatchDensities.Patch(one.label(), density(one, scale, wish)))
            .toList();
    OptionalDouble base = base(read);
    FlareTaken flare = FlareTaken.of(wish, read, base, scale.densest());
    List<PatchDensities.Patch> free =
        read.stream()
            .map(
                one ->
                    new PatchDensities.Patch(
                        one.label(), flare.off(one.density(), scale.densest())))
            .toList();
    return new PatchDensities(calibration, scale.densest(), free, base, flare.words());
  }

  private static PatchDensity density(MeasuredPatch patch, DensityScale scale, ConvertWish wish) {
    PatchDensity density = scale.densityOf(patch.means(), wish.negative());
    if (patch.clippedShare() > MOST_CLIPPED) {
      return new PatchDensity.NotRead(
          Math.round(patch.clippedShare() * 1000) / 10.0
              + " % of its pixels are at 0 or 65535, where light is cut off");
    }
    return density;
  }

  private static OptionalDouble base(List<PatchDensities.Patch> patches) {
    return patches.stream()
        .filter(one -> one.label().equalsIgnoreCase(PatchDensities.BASE))
        .filter(one -> one.density() instanceof PatchDensity.Read)
        .mapToDouble(one -> ((PatchDensity.Read) one.density()).density())
        .findFirst();
  }

  /** The kind of negative of that word. */
  public static NegativeKind kind(String word) {
    for (NegativeKind kind : NegativeKind.values()) {
      if (kind.word().equalsIgnoreCase(word.strip())) {
        return kind;
      }
    }
    throw new BadValueException("negative", word, "silver, stained or colour");
  }
}
