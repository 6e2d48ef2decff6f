package org.wetside.web.density;

import org.jspecify.annotations.Nullable;

/** Readings as a table for other programs. */
public final class PatchTable {
  private PatchTable() {}

  /** Lines of cells with commas between; an empty cell was not read. */
  public static String csv(PatchesView view) {
    StringBuilder text = new StringBuilder("step,density,net,mean,sd,pixels,clipped_pixels\n");
    DensitiesView densities = view.densities();
    for (int i = 0; i < view.patches().size(); i++) {
      PatchesView.PatchView one = view.patches().get(i);
      DensitiesView.DensityView read = densities == null ? null : densities.patches().get(i);
      text.append(one.label())
          .append(',')
          .append(cell(read == null ? null : read.density()))
          .append(',')
          .append(cell(read == null ? null : read.net()))
          .append(',')
          .append(Claim.pixel(one.mean()))
          .append(',')
          .append(Claim.pixel(one.sd()))
          .append(',')
          .append(one.pixels())
          .append(',')
          .append(one.clippedPixels())
          .append('\n');
    }
    return text.toString();
  }

  private static String cell(@Nullable Double density) {
    return density == null ? "" : Claim.density(density);
  }
}
