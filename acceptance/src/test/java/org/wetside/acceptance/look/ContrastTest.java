package org.wetside.acceptance.look;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * The colours as the browser has them, by the contrast ratio of WCAG 2.2 (success criteria 1.4.3:
 * text 4.5, and 1.4.11: edges that mean something 3).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ContrastTest {
  private static final double TEXT = 4.5;
  private static final double EDGE = 3.0;

  /** Relative luminance and ratio as WCAG 2.2 defines them. */
  private static final String RATIO =
      """
      ([one, other]) => {
        const style = getComputedStyle(document.documentElement);
        const luminance = name => {
          const hex = style.getPropertyValue(name).trim().slice(1);
          const [r, g, b] = [0, 2, 4].map(i => parseInt(hex.slice(i, i + 2), 16) / 255)
            .map(c => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
          return 0.2126 * r + 0.7152 * g + 0.0722 * b;
        };
        const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
        return (light + 0.05) / (dark + 0.05);
      }
      """;

  private Browsing browsing;
  private Wetside wetside;
  private WebServer server;
  private Page day;
  private Page night;

  @BeforeAll
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, Clock.systemUTC());
    server = WebServer.start(wetside, WebOptions.onPort(0));
    browsing = new Browsing();
    day = open(ColorScheme.LIGHT);
    night = open(ColorScheme.DARK);
  }

  private Page open(ColorScheme scheme) {
    Page page = browsing.page(800, 600, scheme);
    page.navigate(server.address().resolve("/marks").toString());
    return page;
  }

  @AfterAll
  void close() {
    browsing.close();
    server.close();
    wetside.close();
  }

  @ParameterizedTest
  @CsvSource({
    "--ink,--paper",
    "--soft,--paper",
    "--live,--paper",
    "--ink,--tint",
    "--soft,--tint",
    "--on-printed,--printed",
    "--on-printed-soft,--printed",
    "--on-fill,--fill",
    "--on-alarm,--alarm"
  })
  void textIsReadByDayAndNight(String text, String ground) {
    assertThat(ratio(text, ground, day)).isGreaterThanOrEqualTo(TEXT);
    assertThat(ratio(text, ground, night)).isGreaterThanOrEqualTo(TEXT);
  }

  @ParameterizedTest
  @CsvSource({"--edge,--paper", "--edge,--tint", "--nowline,--paper", "--live,--paper"})
  void edgesAreSeenByDayAndNight(String edge, String ground) {
    assertThat(ratio(edge, ground, day)).isGreaterThanOrEqualTo(EDGE);
    assertThat(ratio(edge, ground, night)).isGreaterThanOrEqualTo(EDGE);
  }

  private static double ratio(String one, String other, Page page) {
    return ((Number) page.evaluate(RATIO, new String[] {one, other})).doubleValue();
  }
}
