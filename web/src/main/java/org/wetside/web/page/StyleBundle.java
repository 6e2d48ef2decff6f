package org.wetside.web.page;

import java.io.ByteArrayOutputStream;
import java.util.List;

/** The style sheet: small files in the order of the cascade, served as one. */
final class StyleBundle {
  static final String NAME = "wetside.css";

  private static final List<String> FILES =
      List.of(
          "faces",
          "tokens",
          "night",
          "hatches",
          "ground",
          "drawings",
          "desk",
          "keys",
          "forms",
          "tables",
          "standing",
          "places",
          "rolls",
          "screens",
          "wash",
          "learning",
          "density",
          "curves",
          "tape",
          "bench",
          "bench-keys",
          "bench-moments",
          "bench-shapes",
          "bench-two",
          "bench-care",
          "test",
          "motion",
          "dark",
          "print");

  private StyleBundle() {}

  static byte[] read() {
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    for (String file : FILES) {
      String name = "css/" + file + ".css";
      byte[] part =
          StaticFiles.resource(name)
              .orElseThrow(() -> new IllegalStateException("style file " + name + " is missing"));
      whole.writeBytes(part);
    }
    return whole.toByteArray();
  }
}
