package org.wetside.acceptance.screens;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.web.Reach;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PairedScreenTest {
  private static final int[] WIDTHS = {320, 390, 899, 900, 1600};

  private Browsing browsing;
  private Wetside open;
  private WebServer plain;
  private Wetside encrypted;
  private WebServer secure;

  @BeforeAll
  void serve(@TempDir Path home) {
    open = Wetside.open(home.resolve("open"), Clock.systemUTC());
    plain = WebServer.start(open, WebOptions.onPort(0).reaching(Reach.LAN));
    encrypted = Wetside.open(home.resolve("encrypted"), Clock.systemUTC());
    secure = WebServer.start(encrypted, WebOptions.onPort(0).reaching(Reach.LAN_TLS));
    browsing = new Browsing();
  }

  @AfterAll
  void close() {
    browsing.close();
    plain.close();
    open.close();
    secure.close();
    encrypted.close();
  }

  /** From the picture on the first screen to the plan on the second, and out again. */
  @Test
  void aPhoneIsLetInByItsCameraAndRemoved() throws IOException, ReaderException {
    try (Page desk = browsing.page(1280, 900);
        Page phone = browsing.page(390, 844)) {
      phone.navigate(plain.addresses().get(0) + "/bench");
      assertThat(phone.locator("h1").innerText()).isEqualTo("This screen is not paired yet.");

      desk.navigate(plain.address() + "screens");
      desk.getByText("Show a code").click();
      phone.navigate(photographed(desk));
      phone.locator("[name=name]").fill("phone at the sink");
      phone.getByText("Let this screen in").click();
      assertThat(phone.locator(".said").innerText()).contains("let in as phone at the sink");
      assertThat(phone.locator("nav a").count()).isGreaterThan(5);

      desk.getByText("See whether it is in").click();
      assertThat(desk.locator("h1").innerText()).contains("phone at the sink");
      desk.locator("button:has-text('Remove')").click();
      assertThat(desk.locator(".said").innerText()).contains("is not let in any more");
      phone.navigate(plain.addresses().get(0) + "/drawer");
      assertThat(phone.locator("h1").innerText())
          .startsWith("This screen, phone at the sink, was removed on");
    }
  }

  /** Over an open line the browser itself says what it keeps back. */
  @Test
  void anOpenLineIsNoSecureContext() {
    try (Page phone = browsing.page(390, 844);
        Page desk = browsing.page(390, 844)) {
      phone.navigate(plain.addresses().get(0) + "/pair");
      desk.navigate(plain.address() + "marks");
      assertThat(phone.evaluate("window.isSecureContext")).isEqualTo(false);
      assertThat(desk.evaluate("window.isSecureContext")).isEqualTo(true);
    }
  }

  static Stream<String> bare() {
    return Stream.of("/pair", "/pair?key=any", "/certificate");
  }

  @ParameterizedTest
  @MethodSource("bare")
  void whatAnybodyMaySeeIsAsGoodAsEveryPage(String path) {
    String at =
        path.equals("/certificate")
            ? secure.address() + "certificate"
            : plain.addresses().get(0) + path;
    for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
      try (Page page = browsing.page(390, 844, scheme)) {
        page.navigate(at);
        assertThat(
                new AxeBuilder(page)
                    .analyze().getViolations().stream()
                        .map(rule -> rule.getId() + " " + rule.getNodes()))
            .as(path + " " + scheme)
            .isEmpty();
        for (int width : WIDTHS) {
          page.setViewportSize(width, 800);
          int wide = (int) page.evaluate("() => document.documentElement.scrollWidth");
          assertThat(wide).as(path + " at " + width + " px").isLessThanOrEqualTo(width);
        }
        page.setViewportSize(390, 844);
        Object small =
            page.evaluate(
                "() => [...document.querySelectorAll('button, .btn, input:not([type=hidden])')]"
                    + ".filter(e => e.getBoundingClientRect().height < 47.5).map(e => e.outerHTML)");
        assertThat((List<?>) small).as(path).isEmpty();
      }
    }
  }

  /** What a camera sees of the first screen. */
  private static String photographed(Page page) throws IOException, ReaderException {
    BufferedImage picture =
        Objects.requireNonNull(
            ImageIO.read(new ByteArrayInputStream(page.locator(".qr").screenshot())));
    int wide = picture.getWidth();
    int high = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, wide, high, null, 0, wide);
    return new QRCodeReader()
        .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(wide, high, pixels))))
        .getText();
  }
}
