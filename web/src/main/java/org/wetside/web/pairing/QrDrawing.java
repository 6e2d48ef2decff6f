package org.wetside.web.pairing;

import io.nayuki.qrcodegen.QrCode;

/**
 * A text drawn as a QR code (ISO/IEC 18004).
 *
 * @param size width and height in modules, the quiet zone of four on each side included
 * @param path outline of all dark modules, for the {@code d} of an SVG path
 */
public record QrDrawing(int size, String path) {
  private static final int QUIET = 4;

  /** Draws an address; a sixth of the drawing may be lost and it is still read. */
  static QrDrawing of(String text) {
    QrCode code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < code.size; y++) {
      for (int x = 0; x < code.size; x++) {
        if (code.getModule(x, y)) {
          path.append('M').append(x + QUIET).append(' ').append(y + QUIET).append("h1v1h-1z");
        }
      }
    }
    return new QrDrawing(code.size + 2 * QUIET, path.toString());
  }
}
