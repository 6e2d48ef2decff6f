package org.wetside.web.page;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.GZIPOutputStream;

/** One file kept in memory, plain and zipped: zipped once, not at every answer. */
final class StaticFile {
  private final String mediaType;
  private final byte[] plain;
  private final byte[] zipped;

  private StaticFile(String mediaType, byte[] plain, byte[] zipped) {
    this.mediaType = mediaType;
    this.plain = plain;
    this.zipped = zipped;
  }

  static StaticFile of(String mediaType, byte[] plain) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
      zip.write(plain);
    } catch (IOException impossibleInMemory) {
      throw new UncheckedIOException(impossibleInMemory);
    }
    return new StaticFile(mediaType, plain, out.toByteArray());
  }

  void answer(Context ctx) {
    ctx.disableCompression();
    ctx.contentType(mediaType);
    ctx.header("Vary", "Accept-Encoding");
    String accepted = ctx.header("Accept-Encoding");
    if (zipped.length < plain.length && accepted != null && accepted.contains("gzip")) {
      ctx.header("Content-Encoding", "gzip");
      ctx.result(zipped);
    } else {
      ctx.result(plain);
    }
  }
}
