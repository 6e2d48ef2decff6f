package org.wetside.web.contract;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** What the Javadoc of a record says; the build writes it into a file beside this class. */
final class Meanings {
  private static final Properties TEXTS = load();

  private Meanings() {}

  /** Of the record as a whole; empty where nothing is written. */
  static String of(Class<?> type) {
    return TEXTS.getProperty(type.getCanonicalName(), "");
  }

  /** Of one component; empty where nothing is written. */
  static String of(Class<?> type, String component) {
    return TEXTS.getProperty(type.getCanonicalName() + "." + component, "");
  }

  private static Properties load() {
    Properties texts = new Properties();
    try (InputStream file = Meanings.class.getResourceAsStream("meanings.properties")) {
      if (file == null) {
        throw new IllegalStateException("the build has not written meanings.properties");
      }
      texts.load(new InputStreamReader(file, StandardCharsets.UTF_8));
      return texts;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
