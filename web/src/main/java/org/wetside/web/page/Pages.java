package org.wetside.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Units;

/** Front door of the pages: makes the sheet of a page and draws a template on it. */
public final class Pages {
  private static final String THEME_COOKIE = "theme";
  private static final String SAID_COOKIE = "said";
  private static final int A_YEAR_SECONDS = 31_536_000;
  private static final int SAID_SECONDS = 60;

  private final TemplateEngine templates;
  private final StaticFiles files;
  private final boolean demo;

  /**
   * @param files where the sheet finds its style
   * @param demo whether everything shown is invented
   */
  public Pages(StaticFiles files, boolean demo) {
    this.files = files;
    this.demo = demo;
    templates =
        TemplateEngine.createPrecompiled(
            null, ContentType.Html, Pages.class.getClassLoader(), "org.wetside.web.templates");
    templates.setBinaryStaticContent(true);
  }

  /** The sheet of a page of that place, with a title that says the answer in few words. */
  public Sheet sheet(Context ctx, Place place, String title) {
    return sheet(ctx, Optional.of(place), title);
  }

  /** The sheet of a page that may belong to no place. */
  public Sheet sheet(Context ctx, Optional<Place> place, String title) {
    return new Sheet(
        title,
        place,
        Theme.fromWord(ctx.cookie(THEME_COOKIE)),
        units(ctx),
        demo,
        files.root(),
        takeSaid(ctx));
  }

  /** The sheet of a page for somebody who may see nothing of the home, nor use up what it says. */
  public Sheet bareSheet(Context ctx, String title) {
    return new Sheet(
        title,
        Optional.empty(),
        Theme.fromWord(ctx.cookie(THEME_COOKIE)),
        units(ctx),
        demo,
        files.root(),
        Optional.empty());
  }

  /**
   * Answers with a page.
   *
   * @param template file under {@code src/main/jte}, for example {@code "drawer.jte"}
   * @param model the template's only parameter
   */
  public void show(Context ctx, String template, Object model) {
    Utf8ByteOutput html = new Utf8ByteOutput();
    templates.render(template, model, html);
    ctx.contentType("text/html; charset=utf-8");
    ctx.header("Cache-Control", "no-store");
    ctx.result(MarkedForms.in(html.toByteArray(), () -> FormTokens.of(ctx)));
  }

  /** Shows a form again that was refused: status 422, with all that was typed in the model. */
  public void showRefused(Context ctx, String template, Object model) {
    ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
    show(ctx, template, model);
  }

  /** After a form was kept: on to that page, which says so once. */
  public void goSaying(Context ctx, String path, String said) {
    Cookie cookie = new Cookie(SAID_COOKIE, URLEncoder.encode(said, StandardCharsets.UTF_8));
    cookie.setMaxAge(SAID_SECONDS);
    cookie.setHttpOnly(true);
    cookie.setSameSite(SameSite.STRICT);
    ctx.cookie(cookie);
    ctx.redirect(path, HttpStatus.SEE_OTHER);
  }

  /** The units chosen on this device; metric until somebody chose. */
  public static Units units(Context ctx) {
    return UnitsCookie.read(ctx.cookie(UnitsCookie.NAME));
  }

  /** Remembers the theme on this device; null returns to what the system says. */
  public void choose(Context ctx, @Nullable Theme theme) {
    if (theme == null) {
      ctx.removeCookie(THEME_COOKIE, "/");
      return;
    }
    // readable by the page: key N at the Bench changes it without asking the server
    Cookie cookie = new Cookie(THEME_COOKIE, theme.word());
    cookie.setMaxAge(A_YEAR_SECONDS);
    cookie.setSameSite(SameSite.STRICT);
    ctx.cookie(cookie);
  }

  private static Optional<String> takeSaid(Context ctx) {
    String said = ctx.cookie(SAID_COOKIE);
    if (said == null || said.isBlank()) {
      return Optional.empty();
    }
    ctx.removeCookie(SAID_COOKIE, "/");
    return Optional.of(URLDecoder.decode(said, StandardCharsets.UTF_8));
  }
}
