package org.wetside.core.development;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The bands prove themselves: every published time is predicted from the others, by each kind of
 * step, and the 90 % band must hold about nine in ten.
 */
class LeaveOneOutTest {
  private static final int ENOUGH_CASES = 20;
  private static final Path DOCUMENT = Path.of("..", "docs", "performance.md");

  private static Map<String, List<LeftOut.Case>> byKind = Map.of();

  @BeforeAll
  static void predictEverything() {
    byKind =
        new LeftOut()
            .all().stream()
                .collect(
                    Collectors.groupingBy(
                        LeftOut.Case::kind, LinkedHashMap::new, Collectors.toList()));
  }

  @Test
  void ninetyPercentBandsHoldAboutNineInTen() {
    assertThat(byKind).hasSizeGreaterThanOrEqualTo(10);
    byKind.forEach(
        (kind, cases) -> {
          if (cases.size() >= ENOUGH_CASES) {
            assertThat(coverage(cases))
                .as("coverage of %s over %d cases", kind, cases.size())
                .isBetween(0.85, 0.97);
          }
        });
  }

  @Test
  void theDocumentSaysWhatWasFound() throws IOException {
    String table = table();
    System.out.println(table);
    assertThat(Files.readString(DOCUMENT)).contains(table);
  }

  private static String table() {
    StringBuilder text =
        new StringBuilder(
            "| Step | cases | median error | 90 % within | in the band | one rule: median | one rule: 90 % within |\n"
                + "|---|---|---|---|---|---|---|\n");
    byKind.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            kind -> {
              List<LeftOut.Case> cases = kind.getValue();
              text.append(
                  String.format(
                      Locale.ROOT,
                      "| %s | %d | %.1f %% | %.1f %% | %.0f %% | %.1f %% | %.1f %% |%n",
                      kind.getKey(),
                      cases.size(),
                      100 * quantile(cases.stream().map(LeftOut.Case::lnError).toList(), 0.5),
                      100 * quantile(cases.stream().map(LeftOut.Case::lnError).toList(), 0.9),
                      100 * coverage(cases),
                      100
                          * quantile(
                              cases.stream().map(LeftOut.Case::lnErrorOfOneRule).toList(), 0.5),
                      100
                          * quantile(
                              cases.stream().map(LeftOut.Case::lnErrorOfOneRule).toList(), 0.9)));
            });
    return text.toString();
  }

  private static double coverage(List<LeftOut.Case> cases) {
    long inside =
        cases.stream()
            .filter(one -> Math.abs(one.lnError()) <= Band.NINETY_PERCENT * one.lnSd())
            .count();
    return inside / (double) cases.size();
  }

  private static double quantile(List<Double> errors, double share) {
    double[] sorted = errors.stream().mapToDouble(Math::abs).sorted().toArray();
    return sorted[(int) Math.ceil(share * sorted.length) - 1];
  }
}
