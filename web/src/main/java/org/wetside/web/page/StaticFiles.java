package org.wetside.web.page;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * Style, scripts, faces and marks under one address that changes whenever any of them does, so that
 * browsers may keep them for ever. Modules import one another by relative names, which is why the
 * mark of the content stands in the path and not behind each name.
 */
public final class StaticFiles {
  private static final Pattern SAFE_NAME =
      Pattern.compile("[a-z0-9-]+(/[a-z0-9-]+)*(\\.[a-z0-9]+)+");
  private static final String FOR_EVER = "public, max-age=31536000, immutable";
  private static final Map<String, String> MEDIA_TYPES =
      Map.of(
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "svg", "image/svg+xml; charset=utf-8",
          "woff2", "font/woff2",
          "txt", "text/plain; charset=utf-8",
          "webmanifest", "application/manifest+json");

  private final String mark = ContentMark.ofStaticFiles();
  private final Map<String, StaticFile> kept = new ConcurrentHashMap<>();

  /** The address under which all files stand now, without a final slash. */
  public String root() {
    return "/static/" + mark;
  }

  /** Answers {@code /static/{mark}/<name>}; an older mark gets the present file, not kept. */
  public void serve(Context ctx) {
    String name = ctx.pathParam("name");
    Optional<StaticFile> found = find(name);
    if (found.isEmpty()) {
      ctx.status(HttpStatus.NOT_FOUND).contentType("text/plain; charset=utf-8");
      ctx.result("There is no file " + name + ".");
      return;
    }
    StaticFile file = found.get();
    ctx.header("Cache-Control", ctx.pathParam("mark").equals(mark) ? FOR_EVER : "no-cache");
    file.answer(ctx);
  }

  /**
   * Answers with a file that must keep one address for ever, such as a worker; asked for anew each
   * time.
   */
  public void serveUnmarked(Context ctx, String name) {
    StaticFile file =
        find(name).orElseThrow(() -> new IllegalArgumentException("there is no file " + name));
    ctx.header("Cache-Control", "no-cache");
    file.answer(ctx);
  }

  private Optional<StaticFile> find(String name) {
    StaticFile known = kept.get(name);
    if (known != null) {
      return Optional.of(known);
    }
    if (!SAFE_NAME.matcher(name).matches()) {
      return Optional.empty();
    }
    Optional<StaticFile> read =
        contentOf(name).map(content -> StaticFile.of(mediaTypeOf(name), content));
    read.ifPresent(file -> kept.put(name, file));
    return read;
  }

  private static Optional<byte[]> contentOf(String name) {
    return StyleBundle.named(name).or(() -> resource(name));
  }

  /** The bytes of a file under {@code static/} on the class path. */
  static Optional<byte[]> resource(String name) {
    try (InputStream in = StaticFiles.class.getResourceAsStream("/static/" + name)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException unreadable) {
      throw new UncheckedIOException("static file " + name, unreadable);
    }
  }

  private static String mediaTypeOf(String name) {
    String ending = name.substring(name.lastIndexOf('.') + 1);
    return MEDIA_TYPES.getOrDefault(ending, "application/octet-stream");
  }
}
