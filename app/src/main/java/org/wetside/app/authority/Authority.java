package org.wetside.app.authority;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import java.util.HexFormat;
import java.util.Locale;

/**
 * Who vouches for the addresses of this machine.
 *
 * @param key never leaves the home
 * @param certificate what a phone is told to trust; good for names and addresses at home only
 */
public record Authority(PrivateKey key, X509Certificate certificate) {
  /** The certificate as a file, in DER. */
  public byte[] encoded() {
    try {
      return certificate.getEncoded();
    } catch (GeneralSecurityException unwritable) {
      throw new IllegalStateException(unwritable);
    }
  }

  /** SHA-256 of the certificate in pairs of figures, to be compared with what a phone shows. */
  public String fingerprint() {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(encoded());
      return HexFormat.ofDelimiter(":").formatHex(digest).toUpperCase(Locale.ROOT);
    } catch (GeneralSecurityException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }
}
