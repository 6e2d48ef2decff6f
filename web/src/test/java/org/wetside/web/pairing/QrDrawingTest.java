package org.wetside.web.pairing;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QrDrawingTest {
  private static final Pattern MODULE = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");
  private static final int SCALE = 6;
  private static final int WHITE = 0xFFFFFF;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://192.168.1.5:7373/pair?key=sXVEStV5O6-LB5gb8mFVNg",
        "https://[fd00:1234:5678:9abc:def0:1234:5678:9abc]:65535/pair?key=sXVEStV5O6-LB5gb8mFVNg",
        "http://10.0.0.7:7373/certificate"
      })
  void whatIsDrawnIsReadBack(String address) throws ReaderException {
    QrDrawing drawing = QrDrawing.of(address);
    int side = drawing.size() * SCALE;
    int[] pixels = new int[side * side];
    Arrays.fill(pixels, WHITE);
    int left = drawing.size();
    for (Matcher module = MODULE.matcher(drawing.path()); module.find(); ) {
      int x = Integer.parseInt(module.group(1));
      int y = Integer.parseInt(module.group(2));
      left = Math.min(left, Math.min(x, y));
      for (int row = y * SCALE; row < (y + 1) * SCALE; row++) {
        Arrays.fill(pixels, row * side + x * SCALE, row * side + (x + 1) * SCALE, 0);
      }
    }
    assertThat(left).as("quiet zone").isEqualTo(4);
    BinaryBitmap image =
        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
    assertThat(new QRCodeReader().decode(image).getText()).isEqualTo(address);
  }
}
