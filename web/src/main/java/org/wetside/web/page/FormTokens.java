package org.wetside.web.page;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The mark that every form carries and only this browser's pages can know: made of a cookie that no
 * script reads, and of the key of the screen where there is one. Nothing is kept on the server, so
 * that a form typed before a restart is still good after it.
 */
public final class FormTokens {
  /** The hidden field. */
  public static final String FIELD = "form-token";

  private static final String COOKIE = "form";
  private static final String SESSION = "wetside.session";
  private static final Pattern KEY = Pattern.compile("[A-Za-z0-9_-]{22}");
  private static final int KEY_BYTES = 16;
  private static final int A_YEAR_SECONDS = 31_536_000;
  private static final SecureRandom CHANCE = new SecureRandom();

  private FormTokens() {}

  /** Says by which key the browser was let in; its forms are bound to that too. */
  public static void bind(Context ctx, String session) {
    ctx.attribute(SESSION, session);
  }

  /** Whether the browser that sends this form keeps the cookie its pages are marked by. */
  public static boolean hasCookie(Context ctx) {
    return sent(ctx) != null;
  }

  /** Whether the form that is sent carries the mark of the browser that sends it. */
  public static boolean isGood(Context ctx) {
    String key = sent(ctx);
    String token = ctx.formParam(FIELD);
    return key != null
        && token != null
        && MessageDigest.isEqual(bytes(token), bytes(token(key, session(ctx))));
  }

  /** The mark for a page that is shown now; a browser without a cookie is given one. */
  static String of(Context ctx) {
    String key = sent(ctx);
    return token(key == null ? give(ctx) : key, session(ctx));
  }

  private static String give(Context ctx) {
    byte[] chance = new byte[KEY_BYTES];
    CHANCE.nextBytes(chance);
    String key = Base64.getUrlEncoder().withoutPadding().encodeToString(chance);
    Cookie cookie = new Cookie(COOKIE, key);
    cookie.setHttpOnly(true);
    cookie.setSameSite(SameSite.STRICT);
    cookie.setMaxAge(A_YEAR_SECONDS);
    ctx.cookie(cookie);
    return key;
  }

  private static @Nullable String sent(Context ctx) {
    String key = ctx.cookie(COOKIE);
    return key != null && KEY.matcher(key).matches() ? key : null;
  }

  private static String session(Context ctx) {
    return Objects.requireNonNullElse(ctx.attribute(SESSION), "");
  }

  private static String token(String key, String session) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(bytes("form\n" + key + "\n" + session));
      return Base64.getUrlEncoder().withoutPadding().encodeToString(digest);
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
