package org.wetside.web.page;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Optional;

/**
 * The two style sheets: small files in the order of the cascade, served as one. The Bench has its
 * own, because a page for wet hands shall not wait for the forms of the desk.
 */
enum StyleBundle {
  DESK(
      "wetside.css",
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
          "testroll",
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
          "print")),
  BENCH(
      "bench.css",
      List.of(
          "faces",
          "tokens",
          "night",
          "hatches",
          "ground",
          "drawings",
          "keys",
          "forms",
          "tables",
          "standing",
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
          "print"));

  private final String file;

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of, so nothing changes it
  private final List<String> parts;

  StyleBundle(String file, List<String> parts) {
    this.file = file;
    this.parts = parts;
  }

  /** The whole of the sheet of that name; empty when there is none. */
  static Optional<byte[]> named(String name) {
    for (StyleBundle bundle : values()) {
      if (bundle.file.equals(name)) {
        return Optional.of(bundle.read());
      }
    }
    return Optional.empty();
  }

  private byte[] read() {
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    for (String part : parts) {
      String name = "css/" + part + ".css";
      byte[] content =
          StaticFiles.resource(name)
              .orElseThrow(() -> new IllegalStateException("style file " + name + " is missing"));
      whole.writeBytes(content);
    }
    return whole.toByteArray();
  }
}
