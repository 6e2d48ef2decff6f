package org.wetside.core.sensitometry;

/** From a pixel to a density: a fitted formula or a table. */
sealed interface PixelScale permits PixelScale.Formula, PixelScale.Table {
  /** Density of a pixel [-]; NaN where the scale says nothing. */
  double densityOf(double pixel);

  /**
   * P = dark + gain·10^(−exponent·D).
   *
   * @param dark pixel without light
   * @param gain pixel of clear light above it, above 0
   * @param exponent above 0
   */
  record Formula(double dark, double gain, double exponent) implements PixelScale {
    @Override
    public double densityOf(double pixel) {
      return pixel > dark ? Math.log10(gain / (pixel - dark)) / exponent : Double.NaN;
    }
  }

  /** Densities by falling log pixel, joined by a monotone cubic. */
  final class Table implements PixelScale {
    private final MonotoneCubic cubic;

    /** Densities rising and pixels falling; at least two. */
    Table(double[] densities, double[] pixels) {
      double[] darkness = new double[pixels.length];
      for (int i = 0; i < pixels.length; i++) {
        darkness[i] = -Math.log10(pixels[i]);
      }
      cubic = MonotoneCubic.through(darkness, densities.clone());
    }

    @Override
    public double densityOf(double pixel) {
      return cubic.at(-Math.log10(pixel));
    }
  }
}
