package org.wetside.web.pairing;

import io.nayuki.qrcodegen.QrCode;
import java.util.ArrayList;
import java.util.List;

/**
 * A text drawn as a QR code (ISO/IEC 18004).
 *
 * @param size width and height in modules, the quiet zone of four on each side included
 * @param dark the dark modules
 */
public record QrDrawing(int size, List<Module> dark) {
  private static final int QUIET = 4;

  /** Keeps an unmodifiable copy. */
  public QrDrawing {
    dark = List.copyOf(dark);
  }

  /** One dark module; 0, 0 is the upper left of the quiet zone. */
  public record Module(int x, int y) {}

  /** Draws an address; a sixth of the drawing may be lost and it is still read. */
  public static QrDrawing of(String text) {
    QrCode code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
    List<Module> dark = new ArrayList<>();
    for (int y = 0; y < code.size; y++) {
      for (int x = 0; x < code.size; x++) {
        if (code.getModule(x, y)) {
          dark.add(new Module(x + QUIET, y + QUIET));
        }
      }
    }
    return new QrDrawing(code.size + 2 * QUIET, dark);
  }

  /** Outline of all dark modules, for the {@code d} of an SVG path. */
  public String path() {
    StringBuilder path = new StringBuilder();
    for (Module one : dark) {
      path.append('M').append(one.x()).append(' ').append(one.y()).append("h1v1h-1z");
    }
    return path.toString();
  }
}
