package org.wetside.core.sensitometry;

/** What a search for least squares came to. */
public final class LeastSquaresFit {
  private final double[] parameters;
  private final double squares;
  private final boolean converged;

  LeastSquaresFit(double[] parameters, double squares, boolean converged) {
    this.parameters = parameters.clone();
    this.squares = squares;
    this.converged = converged;
  }

  /** The parameters in the order of the model; the start when the search did not come to rest. */
  public double[] parameters() {
    return parameters.clone();
  }

  /** Sum of the squared residuals, in the squared unit of the readings. */
  public double squares() {
    return squares;
  }

  /** Whether the search came to rest. */
  public boolean converged() {
    return converged;
  }
}
