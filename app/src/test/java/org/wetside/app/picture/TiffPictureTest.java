package org.wetside.app.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.instrument.PatchMeasure;
import org.wetside.core.instrument.PatchRectangle;
import org.wetside.core.quantity.BadValueException;

/** Real files, written here tag by tag. */
class TiffPictureTest {
  @TempDir private Path folder;

  private static TiffFile grey() {
    return new TiffFile(60, 40).pixels((x, y) -> 1000 * (x / 10) + y);
  }

  private Path file() {
    return folder.resolve("p.tif");
  }

  @Test
  void meansDeviationsAndCountsAreThoseOfTheVeryPixels() {
    Path file = grey().to(file());
    try (TiffPicture picture = TiffPicture.open(file)) {
      PatchMeasure one = picture.measure(List.of(new PatchRectangle("a", 20, 10, 10, 4))).get(0);

      assertThat(one.pixels()).isEqualTo(40);
      assertThat(one.measured().name()).isEqualTo("grey");
      // rows 10 to 13 of a block of 2000: mean 2011.5; sd of 10 × (10, 11, 12, 13) with n − 1
      assertThat(one.measured().mean()).isEqualTo(2011.5);
      assertThat(one.measured().sd()).isCloseTo(Math.sqrt(50 / 39.0), within(1e-9));
      assertThat(one.measured().clipped()).isZero();
    }
  }

  @Test
  void pixelsAtBothEndsAreCountedAsCutOff() {
    Path file = new TiffFile(20, 10).pixels((x, y) -> x < 5 ? 0 : x < 8 ? 65535 : 30000).to(file());
    try (TiffPicture picture = TiffPicture.open(file)) {
      PatchMeasure.Channel all =
          picture.measure(List.of(new PatchRectangle("a", 0, 0, 20, 10))).get(0).measured();

      assertThat(all.atZero()).isEqualTo(50);
      assertThat(all.atFull()).isEqualTo(30);
      assertThat(all.clipped()).isEqualTo(80);
    }
  }

  @Test
  void ofThreeColoursEachIsKeptAndGreenIsMeasured() {
    Path file = new TiffFile(20, 10).rgb().pixels((x, y) -> 10000).to(file());
    try (TiffPicture picture = TiffPicture.open(file)) {
      PatchMeasure one = picture.measure(List.of(new PatchRectangle("a", 0, 0, 9, 9))).get(0);

      assertThat(one.measured().name()).isEqualTo("green");
      assertThat(one.means().channels()).containsExactly(9000.0, 10000.0, 8000.0);
    }
  }

  @Test
  void aRectangleThatLeavesThePictureIsRefusedAndNothingIsMeasured() {
    Path file = grey().to(file());
    try (TiffPicture picture = TiffPicture.open(file)) {
      assertThatThrownBy(() -> picture.measure(List.of(new PatchRectangle("7", 55, 0, 10, 10))))
          .isInstanceOf(BadValueException.class)
          .hasMessageContaining("patch 7")
          .hasMessageContaining("60×40");
    }
  }

  @Test
  void aFileThatSaysNothingWantsTheWordOfWhoMadeIt() {
    Path file = grey().to(file());
    try (TiffPicture picture = TiffPicture.open(file)) {
      assertThat(picture.facts().wantsDeclaration()).isTrue();
      assertThatThrownBy(() -> picture.facts().requireLinear(false))
          .hasMessageContaining("p.tif")
          .hasMessageContaining("says nothing")
          .hasMessageContaining("gamma 1.0");
      assertThat(picture.facts().requireLinear(true).width()).isEqualTo(60);
    }
  }

  @Test
  void aProfileOrATransferTableCanSayThatItIsLinear() {
    int[] straight = new int[65536];
    for (int i = 0; i < straight.length; i++) {
      straight[i] = i;
    }
    for (TiffFile linear :
        List.of(
            grey().profile(TiffFile.straight()),
            grey().profile(TiffFile.gamma(1)),
            grey().shorts(301, straight))) {
      try (TiffPicture picture = TiffPicture.open(linear.to(file()))) {
        assertThat(picture.facts().encoding().kind()).isEqualTo(Encoding.Kind.LINEAR);
        assertThat(picture.facts().requireLinear(false)).isNotNull();
      }
    }
  }

  @Test
  void aGammaInTheProfileTheTransferTableOrExifIsRefused() {
    int[] curved = new int[65536];
    for (int i = 0; i < curved.length; i++) {
      curved[i] = (int) Math.round(65535 * Math.pow(i / 65535.0, 2.2));
    }
    assertRefused(grey().profile(TiffFile.gamma(2.2)), "profile", "gamma-encoded, about 2.2");
    assertRefused(grey().shorts(301, curved), "transfer table", "about 2.2");
    assertRefused(grey().exifColour(1), "Exif says sRGB", "scan it linear");
    assertRefused(grey().profile(TiffFile.straight()).exifColour(1), "Exif says sRGB", "gamma 1.0");
  }

  @Test
  void whatHoldsNoLightIsRefusedEachForItsReason() {
    assertRefused(grey().bits(8), "8 bits", "nearly always gamma-encoded");
    assertRefused(grey().bits(8).shorts(262, 3).shorts(320, new int[768]), "palette", "not light");
    assertRefused(grey().shorts(262, 0), "white is stored as 0", "black as 0");
    assertRefused(grey().shorts(259, 7), "JPEG inside a TIFF", "with loss");
    assertRefused(grey().shorts(339, 3), "floating", "unsigned 16 bits");
    assertRefused(grey().rgb().shorts(262, 5), "inks", "linear 16-bit TIFF");
    assertRefused(grey().rgb().shorts(262, 8), "perceived lightness", "linear 16-bit TIFF");
    assertRefused(grey().shorts(262, 32803), "raw of a sensor", "linear 16-bit TIFF");
  }

  private void assertRefused(TiffFile tiff, String what, String why) {
    Path file = tiff.to(file());
    assertThatThrownBy(() -> TiffPicture.open(file).close())
        .as(what)
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("p.tif")
        .hasMessageContaining(what)
        .hasMessageContaining(why);
  }

  @Test
  void otherFormatsAndDamagedFilesAreRefused() throws IOException {
    BufferedImage image = new BufferedImage(20, 20, BufferedImage.TYPE_BYTE_GRAY);
    ImageIO.write(image, "jpeg", file().toFile());
    assertThatThrownBy(() -> TiffPicture.open(file()).close())
        .hasMessageContaining("JPEG")
        .hasMessageContaining("compressed with loss");
    ImageIO.write(image, "png", file().toFile());
    assertThatThrownBy(() -> TiffPicture.open(file()).close()).hasMessageContaining("not a TIFF");
    grey().to(file());
    Files.write(file(), java.util.Arrays.copyOf(Files.readAllBytes(file()), 60));
    assertThatThrownBy(() -> TiffPicture.open(file()).close()).hasMessageContaining("p.tif");
    Files.write(file(), new byte[0]);
    assertThatThrownBy(() -> TiffPicture.open(file()).close()).hasMessageContaining("not a TIFF");
  }

  @ParameterizedTest
  @ValueSource(strings = {"LZW", "Deflate", "PackBits"})
  void compressionWithoutLossChangesNothing(String compression) throws IOException {
    BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_USHORT_GRAY);
    for (int y = 0; y < 40; y++) {
      for (int x = 0; x < 60; x++) {
        image.getRaster().setSample(x, y, 0, 1000 * (x / 10) + y);
      }
    }
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file().toFile())) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionType(compression);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), param);
    }
    writer.dispose();
    try (TiffPicture picture = TiffPicture.open(file())) {
      assertThat(
              picture
                  .measure(List.of(new PatchRectangle("a", 20, 10, 10, 4)))
                  .get(0)
                  .measured()
                  .mean())
          .isEqualTo(2011.5);
    }
  }

  /** The test's own LZW is read as any other; with differences of 16 bits it is refused at once. */
  @Test
  void lzwIsReadAndWithAPredictorOfSixteenBitsRefused() {
    try (TiffPicture picture = TiffPicture.open(grey().lzw(1).to(file()))) {
      assertThat(
              picture
                  .measure(List.of(new PatchRectangle("a", 20, 10, 10, 4)))
                  .get(0)
                  .measured()
                  .mean())
          .isEqualTo(2011.5);
    }
    assertRefused(
        grey().lzw(2), "differences of neighbours", "save it without compression or predictor");
    for (int deflate : new int[] {8, 32946}) {
      assertRefused(
          grey().shorts(259, deflate).shorts(317, 2), "differences of neighbours", "predictor");
    }
  }

  @Test
  void theViewForTheEyeIsASmallJpegOfTheRegion() throws IOException {
    Path file = new TiffFile(600, 300).pixels((x, y) -> x * 100).to(file());
    try (TiffPicture picture = TiffPicture.open(file)) {
      byte[] jpeg = Preview.jpeg(picture, new Rectangle(0, 0, 600, 300), 200);
      BufferedImage view = ImageIO.read(new ByteArrayInputStream(jpeg));
      assertThat(view.getWidth()).isEqualTo(200);
      assertThat(view.getHeight()).isEqualTo(100);
      assertThatThrownBy(() -> Preview.jpeg(picture, new Rectangle(500, 0, 200, 10), 200))
          .hasMessageContaining("600×300");
      assertThatThrownBy(() -> Preview.jpeg(picture, new Rectangle(0, 0, 9, 9), 9000))
          .hasMessageContaining("9000 pixels");
    }
  }
}
