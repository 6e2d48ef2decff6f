package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.sensitometry.FitModel;
import org.wetside.core.sensitometry.LeastSquares;
import org.wetside.core.sensitometry.LeastSquaresFit;

/**
 * Problems with certified answers (NIST StRD; sources SE-S09, SE-S10, SE-S11): parameters to eight
 * digits, standard deviations to six, from every certified start.
 */
class CertifiedFitsTest {
  static Stream<Arguments> starts() {
    return Stream.of("Misra1a", "BoxBOD", "Rat43")
        .flatMap(name -> Stream.of(Arguments.of(name, "start_1"), Arguments.of(name, "start_2")));
  }

  private static FitModel model(String name) {
    return name.equals("Rat43") ? CertifiedFitsTest::growth : CertifiedFitsTest::saturation;
  }

  /** y = b1·(1 − exp(−b2·x)) */
  private static double saturation(double x, double[] b, double[] gradient) {
    double left = Math.exp(-b[1] * x);
    gradient[0] = 1 - left;
    gradient[1] = b[0] * x * left;
    return b[0] * (1 - left);
  }

  /** y = b1/(1 + exp(b2 − b3·x))^(1/b4) */
  private static double growth(double x, double[] b, double[] gradient) {
    double e = Math.exp(b[1] - b[2] * x);
    double value = b[0] * Math.pow(1 + e, -1 / b[3]);
    double byExponent = -value / b[3] * e / (1 + e);
    gradient[0] = value / b[0];
    gradient[1] = byExponent;
    gradient[2] = -x * byExponent;
    gradient[3] = value * Math.log(1 + e) / (b[3] * b[3]);
    return value;
  }

  @ParameterizedTest
  @MethodSource("starts")
  void comesToTheCertifiedAnswer(String name, String start) {
    List<ReferenceRow> points =
        ReferenceTable.open("checks/nist_points").rows().stream()
            .filter(row -> row.text("dataset").equals(name))
            .toList();
    List<ReferenceRow> certified =
        ReferenceTable.open("checks/nist_certified").rows().stream()
            .filter(row -> row.text("dataset").equals(name))
            .toList();
    LeastSquares squares =
        new LeastSquares(
            model(name),
            points.stream().mapToDouble(row -> row.number("x")).toArray(),
            points.stream().mapToDouble(row -> row.number("y")).toArray());
    LeastSquaresFit fit =
        squares.polishedFrom(certified.stream().mapToDouble(row -> row.number(start)).toArray());
    double[] errors = squares.standardErrors(fit);

    assertThat(fit.converged()).isTrue();
    for (int i = 0; i < certified.size(); i++) {
      double value = certified.get(i).number("value");
      double deviation = certified.get(i).number("standard_deviation");
      assertThat(digits(fit.parameters()[i], value)).as("%s b%d", name, i + 1).isGreaterThan(8);
      assertThat(digits(errors[i], deviation)).as("%s sd of b%d", name, i + 1).isGreaterThan(6);
    }
    assertThat(digits(fit.squares(), certified.get(0).number("squares"))).isGreaterThan(8);
  }

  /** Agreeing digits: the logarithm of the relative error, as NIST counts them. */
  private static double digits(double found, double certified) {
    return -Math.log10(Math.max(Math.abs(found - certified) / Math.abs(certified), 1e-16));
  }
}
