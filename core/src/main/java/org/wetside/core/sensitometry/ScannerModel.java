package org.wetside.core.sensitometry;

/**
 * P = dark + gain·10^(−exponent·D) of a scanner or camera (model, section 3), as a share of the
 * pixel that was seen, so that least squares take relative residuals. The place is the number of
 * the step.
 */
final class ScannerModel implements FitModel {
  private final double[] densities;
  private final double[] pixels;

  ScannerModel(double[] densities, double[] pixels) {
    this.densities = densities;
    this.pixels = pixels;
  }

  @Override
  public double value(double x, double[] parameters, double[] gradient) {
    int step = (int) x;
    double light = Math.pow(10, -parameters[2] * densities[step]);
    gradient[0] = 1 / pixels[step];
    gradient[1] = light / pixels[step];
    gradient[2] = -parameters[1] * Math.log(10) * densities[step] * light / pixels[step];
    return (parameters[0] + parameters[1] * light) / pixels[step];
  }
}
