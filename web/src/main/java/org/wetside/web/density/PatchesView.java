package org.wetside.web.density;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wetside.app.density.MeasuredPatch;
import org.wetside.core.instrument.PatchMeasure;

/**
 * Patches of a picture as they were measured.
 *
 * @param picture name of the file
 * @param channel the one that is measured: grey, or green
 * @param patches in the order in which they were asked for
 * @param densities null when no instrument was named
 */
public record PatchesView(
    String picture, String channel, List<PatchView> patches, @Nullable DensitiesView densities) {
  /**
   * One patch.
   *
   * @param label what it is called
   * @param x pixels from the left edge
   * @param y pixels from the upper edge
   * @param width in pixels
   * @param height in pixels
   * @param pixels how many were counted
   * @param mean of the channel that is measured, 0 to 65535
   * @param sd standard deviation of that channel
   * @param clippedPixels how many of them are 0 or 65535
   * @param channels each channel
   */
  public record PatchView(
      String label,
      int x,
      int y,
      int width,
      int height,
      long pixels,
      double mean,
      double sd,
      long clippedPixels,
      List<ChannelView> channels) {}

  /**
   * One channel of a patch.
   *
   * @param channel grey, red, green or blue
   * @param mean of its values, 0 to 65535
   * @param sd their standard deviation
   * @param clippedPixels how many are 0 or 65535
   */
  public record ChannelView(String channel, double mean, double sd, long clippedPixels) {}

  /** The view of measures. */
  public static PatchesView of(
      String picture, List<PatchMeasure> measures, @Nullable DensitiesView densities) {
    return new PatchesView(
        picture,
        measures.get(0).measured().name(),
        measures.stream().map(PatchesView::patch).toList(),
        densities);
  }

  private static PatchView patch(PatchMeasure one) {
    return new PatchView(
        one.patch().label(),
        one.patch().x(),
        one.patch().y(),
        one.patch().width(),
        one.patch().height(),
        one.pixels(),
        one.measured().mean(),
        one.measured().sd(),
        one.measured().clipped(),
        one.channels().stream()
            .map(each -> new ChannelView(each.name(), each.mean(), each.sd(), each.clipped()))
            .toList());
  }

  /** What is asked of an instrument about these measures. */
  public static DensitiesBody asking(
      List<PatchMeasure> measures, @Nullable String negative, FlareField flare) {
    return new DensitiesBody(
        measures.stream().map(one -> MeansBody.of(MeasuredPatch.of(one))).toList(),
        negative,
        flare.share(),
        flare.opaque());
  }

  /** Lines {@code step,grey} or {@code step,red,green,blue}, for a calibration. */
  public String seenLines() {
    boolean grey = patches.get(0).channels().size() == 1;
    return patches.stream()
        .map(
            one ->
                one.label()
                    + ","
                    + one.channels().stream()
                        .map(each -> Claim.pixel(each.mean()))
                        .collect(Collectors.joining(",")))
        .collect(Collectors.joining("\n", grey ? "step,grey\n" : "step,red,green,blue\n", "\n"));
  }
}
