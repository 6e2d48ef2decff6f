package org.wetside.acceptance;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A real Chromium, the one installed on this machine. A missing browser fails, it never skips:
 * {@code ./verify --install} brings it.
 */
public final class Browsing implements AutoCloseable {
  private static final List<Path> USUAL_PLACES =
      List.of(
          Path.of("/usr/bin/chromium"),
          Path.of("/usr/bin/chromium-browser"),
          Path.of("/usr/bin/google-chrome"));

  /** What is only waited for may take long on a busy machine; what is timed, its test measures. */
  private static final double PATIENCE_MILLIS = 20_000;

  private final Playwright playwright;
  private final Browser browser;

  /** Starts the browser. */
  public Browsing() {
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MILLIS);
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(executable())
                    .setArgs(List.of("--no-sandbox")));
  }

  /** A fresh page of that size, with its own cookies. */
  public Page page(int width, int height) {
    return page(width, height, ColorScheme.LIGHT);
  }

  /** A fresh page of that size on a system that prefers day or night. */
  public Page page(int width, int height, ColorScheme scheme) {
    BrowserContext context =
        browser.newContext(
            new Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setColorScheme(scheme)
                .setTimezoneId("UTC"));
    return context.newPage();
  }

  /** A fresh page of that size in a browser whose scripts are turned off. */
  public Page pageWithoutScripts(int width, int height) {
    return browser
        .newContext(
            new Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setJavaScriptEnabled(false)
                .setTimezoneId("UTC"))
        .newPage();
  }

  private static Path executable() {
    return USUAL_PLACES.stream()
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "No Chromium at " + USUAL_PLACES + "; ./verify --install brings one."));
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
