package org.wetside.core.testroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.quantity.BadValueException;

class CameraExposureTest {
  /** The nominal marks are within 7 % of the powers of two that they stand for. */
  @ParameterizedTest
  @CsvSource({
    "1/2, 2",
    "1/4, 4",
    "1/8, 8",
    "1/15, 16",
    "1/30, 32",
    "1/60, 64",
    "1/125, 128",
    "1/250, 256",
    "1/500, 512",
    "1/1000, 1024",
    "1/8000, 8192"
  })
  void wholeStopsOfTheShutterArePowersOfTwo(String mark, double parts) {
    assertThat(Shutter.parse(mark).exactSeconds()).isCloseTo(1 / parts, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"f/1, 1", "f/2, 2", "f/4, 4", "f/8, 8", "f/16, 16", "f/11, 11.3137", "f/5.6, 5.6569"})
  void wholeStopsOfTheLensArePowersOfRootTwo(String mark, double number) {
    assertThat(Aperture.parse(mark).exactNumber()).isCloseTo(number, within(1e-4));
  }

  @Test
  void everyMarkIsNearItsExactValueAndReadsBack() {
    // customary rounding: 1/15 is 16, 1/13 is 12.7, f/3.5 is 3.56; none is off by 7 %
    for (int thirds = 0; thirds <= 39; thirds++) {
      Shutter shutter = new Shutter(thirds);
      double nominal = 1 / Double.parseDouble(shutter.toString().replaceFirst("^1/", ""));
      assertThat(shutter.exactSeconds() / nominal).isBetween(0.93, 1.07);
      assertThat(Shutter.parse(shutter.toString())).isEqualTo(shutter);
    }
    for (int thirds = 0; thirds <= 36; thirds++) {
      Aperture aperture = new Aperture(thirds);
      double nominal = Double.parseDouble(aperture.toString().substring(2));
      assertThat(aperture.exactNumber() / nominal).isBetween(0.93, 1.07);
      assertThat(Aperture.parse(aperture.toString())).isEqualTo(aperture);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/60@f8", "1/60 at f/8", " 1/60 s @ f/8 ", "1/60@8", "1/60s@F8"})
  void aPairIsReadAsItIsWritten(String text) {
    assertThat(CameraExposure.parse("metered exposure", text)).hasToString("1/60 at f/8");
  }

  @Test
  void stopsAreExactNotNominal() {
    CameraExposure metered = CameraExposure.parse("metered exposure", "1/60@f8");
    // 1/60 to 1/1000 is four stops, f/8 to f/11 one: five less
    assertThat(CameraExposure.parse("e", "1/1000@f11").stopsMoreThan(metered).count())
        .isEqualTo(-5.0);
    // f/8 to f/7.1 is a third
    assertThat(CameraExposure.parse("e", "1/60@f7.1").stopsMoreThan(metered).count())
        .isCloseTo(1 / 3.0, within(1e-12));
  }

  @Test
  void whatIsOnNoDialIsRefused() {
    assertThatThrownBy(() -> CameraExposure.parse("metered exposure", "1/60"))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("metered exposure", "1/60", "1/60@f8");
    assertThatThrownBy(() -> Shutter.parse("1/70"))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("shutter speed", "1/70", "third stops", "1/8000");
    assertThatThrownBy(() -> Aperture.parse("f/8.5"))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("aperture", "f/8.5", "f/64");
    assertThatThrownBy(() -> new Shutter(40)).isInstanceOf(BadValueException.class);
    assertThatThrownBy(() -> new Aperture(-1)).isInstanceOf(BadValueException.class);
  }

  @Test
  void aRangeRefusesLongExposuresAndEndsOutOfOrder() {
    Shutter fast = Shutter.parse("1/500");
    Aperture wide = Aperture.parse("f/2");
    Aperture small = Aperture.parse("f/16");
    assertThatThrownBy(() -> new CameraRange(fast, Shutter.parse("1"), wide, small))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("slowest shutter speed", "1 s", "1/2 s");
    assertThatThrownBy(() -> new CameraRange(Shutter.parse("1/4"), fast, wide, small))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("fastest shutter speed", "1/4 s", "1/500 s");
    assertThatThrownBy(() -> new CameraRange(fast, Shutter.parse("1/4"), small, wide))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("smallest aperture", "f/2", "f/16");
  }
}
