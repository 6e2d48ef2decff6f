package org.wetside.acceptance.sound;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * A real Chromium that throttles what is hidden, as it does for people: the switches that a driver
 * adds against that are left out.
 */
final class HiddenBrowser implements AutoCloseable {
  private static final List<String> KEEP_THROTTLING =
      List.of(
          "disable-background-timer-throttling",
          "disable-backgrounding-occluded-windows",
          "disable-renderer-backgrounding");

  private final ChromeDriver driver;
  private final String page;

  HiddenBrowser() {
    ChromeOptions options = new ChromeOptions();
    options.setBinary("/usr/bin/chromium");
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-background-networking",
        "--no-first-run",
        "--window-size=1280,800");
    options.setExperimentalOption("excludeSwitches", KEEP_THROTTLING);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new java.io.File("/usr/bin/chromedriver"))
            .usingAnyFreePort()
            .build();
    driver = new ChromeDriver(service, options);
    page = driver.getWindowHandle();
    driver.executeCdpCommand("Page.enable", Map.of());
    driver.executeCdpCommand("Page.setBypassCSP", Map.of("enabled", true));
    driver.executeCdpCommand(
        "Page.addScriptToEvaluateOnNewDocument", Map.of("source", text("tap.js")));
  }

  /** Opens an address in the page that is listened to. */
  void open(String address) {
    driver.get(address);
  }

  /** Loads the page anew, as a person would. */
  void reload() {
    driver.navigate().refresh();
  }

  /** Presses a key in that page. */
  void press(String key, String code) {
    for (String type : List.of("keyDown", "keyUp")) {
      driver.executeCdpCommand(
          "Input.dispatchKeyEvent",
          Map.of("type", type, "key", key, "code", code, "text", key.length() == 1 ? key : ""));
    }
  }

  Object ask(String script, Object... given) {
    return Objects.requireNonNull(driver.executeScript("return " + script, given), script);
  }

  void run(String script, Object... given) {
    driver.executeScript(script, given);
  }

  /** The processor as slow as that for the page. */
  void slow(int times) {
    driver.executeCdpCommand("Emulation.setCPUThrottlingRate", Map.of("rate", times));
  }

  /** Another tab comes in front: the page is hidden until {@link #show}. */
  void hide() {
    driver.switchTo().newWindow(WindowType.TAB);
    driver.get("about:blank");
  }

  /** The page comes back to the front. */
  void show() {
    driver.switchTo().window(page);
  }

  private static String text(String name) {
    try (InputStream stream = HiddenBrowser.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("there is no " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
