package org.wetside.app.density;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.instrument.PatchDensity;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.sensitometry.Flare;

/**
 * The flare that is taken off: light of the clear surround that reaches every patch. The surround
 * is the patch called base where there is one, else clear light.
 *
 * @param flare how much; empty when nothing is taken off
 * @param surround density of the surround [-]
 * @param words how it was found, or why nothing is taken off; empty when nobody asked
 */
record FlareTaken(Optional<Flare> flare, double surround, String words) {
  static FlareTaken of(
      ConvertWish wish, List<PatchDensities.Patch> patches, OptionalDouble base, double densest) {
    double surround = base.orElse(0);
    if (wish.opaque().isEmpty()) {
      return new FlareTaken(
          wish.flare(), surround, wish.flare().map(some -> said(some, "as you said")).orElse(""));
    }
    String label = wish.opaque().get();
    PatchDensity seen =
        patches.stream()
            .filter(one -> one.label().equalsIgnoreCase(label))
            .map(PatchDensities.Patch::density)
            .findFirst()
            .orElseThrow(
                () ->
                    new BadValueException(
                        "flare",
                        label,
                        "there is no patch of that label: draw one over a piece that lets no light"
                            + " through, or write a share, for example 0.005 (decimal mark: a"
                            + " point)"));
    if (seen instanceof PatchDensity.Read read) {
      Flare flare = Flare.fromOpaque(read.density() - surround);
      return new FlareTaken(Optional.of(flare), surround, said(flare, "found from patch " + label));
    }
    if (((PatchDensity.NotRead) seen).darker()) {
      return new FlareTaken(
          Optional.empty(),
          surround,
          String.format(
              Locale.ROOT,
              "Patch %s is darker than the densest usable step: flare is below %.4f, and nothing is"
                  + " taken off.",
              label,
              Math.ceil(Flare.fromOpaque(densest - surround).share() * 1e4) / 1e4));
    }
    throw new BadValueException(
        "flare", label, "that patch was not read (" + ((PatchDensity.NotRead) seen).reason() + ")");
  }

  private static String said(Flare flare, String how) {
    return String.format(
        Locale.ROOT, "Flare of %.4f of the surround's light is taken off, %s.", flare.share(), how);
  }

  /** A patch without it. */
  PatchDensity off(PatchDensity density, double densest) {
    if (flare.isEmpty() || !(density instanceof PatchDensity.Read read)) {
      return density;
    }
    try {
      double real = surround + flare.get().corrected(read.density() - surround);
      return real <= densest
          ? new PatchDensity.Read(real)
          : new PatchDensity.NotRead(
              "without flare it is denser than the densest usable step", true);
    } catch (BadValueException tooDark) {
      return new PatchDensity.NotRead("flare alone is brighter than this patch");
    }
  }
}
