package org.wetside.web.voice;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.zip.CRC32;
import org.wetside.reference.VoiceClips;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;

/** The voice of a language: {@code /voice/en.opus} and {@code /voice/en.json}. */
public final class VoiceRoutes implements Routes {
  private final Map<String, Kept> kept = new ConcurrentHashMap<>();

  /** A file with the mark of its content. */
  private static final class Kept {
    private final byte[] bytes;
    private final String mark;

    Kept(byte[] bytes) {
      CRC32 sum = new CRC32();
      sum.update(bytes);
      this.bytes = bytes;
      mark = "\"" + Long.toHexString(sum.getValue()) + "\"";
    }
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(
        "/voice/{language}.opus",
        ctx -> answer(ctx, ".opus", "audio/ogg", language -> VoiceClips.in(language).sound()));
    routes.get(
        "/voice/{language}.json",
        ctx -> answer(ctx, ".json", "application/json", VoiceRoutes::view));
  }

  private static byte[] view(String language) {
    return Json.write(VoiceView.of(language)).getBytes(StandardCharsets.UTF_8);
  }

  private void answer(Context ctx, String ending, String type, Function<String, byte[]> reading) {
    String language = ctx.pathParam("language");
    if (!language.matches("[a-z]{2,3}(-[a-z0-9]{2,8})*")) {
      ctx.status(HttpStatus.NOT_FOUND);
      return;
    }
    Kept file = kept.computeIfAbsent(language + ending, key -> new Kept(reading.apply(language)));
    ctx.header("ETag", file.mark);
    ctx.header("Cache-Control", "no-cache");
    if (file.mark.equals(ctx.header("If-None-Match"))) {
      ctx.status(HttpStatus.NOT_MODIFIED);
      return;
    }
    ctx.contentType(type).result(file.bytes);
  }
}
