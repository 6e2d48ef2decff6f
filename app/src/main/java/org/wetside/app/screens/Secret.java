package org.wetside.app.screens;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Secrets nobody can guess, and how they are compared and kept. */
final class Secret {
  private static final SecureRandom CHANCE = new SecureRandom();
  private static final int BITS_PER_BYTE = 8;

  private Secret() {}

  /** Fresh chance of so many bits, as text that may stand in an address. */
  static String ofBits(int bits) {
    byte[] bytes = new byte[bits / BITS_PER_BYTE];
    CHANCE.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** So many figures, each as likely as any other. */
  static String ofFigures(int figures) {
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < figures; i++) {
      code.append(CHANCE.nextInt(10));
    }
    return code.toString();
  }

  /** What is kept of a secret: its SHA-256. It holds more chance than anybody can try out. */
  static String hash(String secret) {
    return HexFormat.of().formatHex(digest(secret));
  }

  /** Whether two are the same, in a time that does not tell how much of them is. */
  static boolean same(String one, String other) {
    return MessageDigest.isEqual(digest(one), digest(other));
  }

  private static byte[] digest(String secret) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }
}
