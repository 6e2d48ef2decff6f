package org.wetside.web.page;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;

/**
 * Puts the mark of {@link FormTokens} into every form of a page that posts, so that no template can
 * forget it. Templates escape {@code <} in whatever people typed: a form in the page is a form.
 */
final class MarkedForms {
  private static final byte[] FORM = ascii("<form ");
  private static final byte[] POSTS = ascii("method=\"post\"");

  private MarkedForms() {}

  /**
   * The page with its forms marked.
   *
   * @param token asked once, and only when there is such a form
   */
  static byte[] in(byte[] html, Supplier<String> token) {
    ByteArrayOutputStream marked = new ByteArrayOutputStream(html.length + 1024);
    byte[] field = null;
    int copied = 0;
    for (int at = find(html, FORM, 0, html.length);
        at >= 0;
        at = find(html, FORM, at, html.length)) {
      int end = endOfTag(html, at);
      if (find(html, POSTS, at, end) >= 0) {
        field = field == null ? field(token.get()) : field;
        marked.write(html, copied, end - copied);
        marked.writeBytes(field);
        copied = end;
      }
      at = end;
    }
    marked.write(html, copied, html.length - copied);
    return marked.toByteArray();
  }

  private static byte[] field(String token) {
    return ascii(
        "<input type=\"hidden\" name=\"" + FormTokens.FIELD + "\" value=\"" + token + "\">");
  }

  /** Behind the bracket that closes the tag; one inside quotes does not. */
  private static int endOfTag(byte[] html, int from) {
    boolean quoted = false;
    for (int i = from; i < html.length; i++) {
      if (html[i] == '"') {
        quoted = !quoted;
      } else if (html[i] == '>' && !quoted) {
        return i + 1;
      }
    }
    return html.length;
  }

  private static int find(byte[] html, byte[] word, int from, int to) {
    for (int i = from; i <= to - word.length; i++) {
      int same = 0;
      while (same < word.length && html[i + same] == word[same]) {
        same++;
      }
      if (same == word.length) {
        return i;
      }
    }
    return -1;
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
