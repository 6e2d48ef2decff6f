package org.wetside.app.authority;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.wetside.app.CannotDoException;
import org.wetside.app.home.Home;
import org.wetside.app.home.PrivateFile;

/** The authority of a home: made when it is first needed, made anew before it ends. */
public final class KeepAuthority {
  /** A new one is made when the old one lasts no longer than this. */
  static final Duration RENEWED_BEFORE = Duration.ofDays(30);

  private static final String ENTRY = "authority";

  /** PKCS #12 wants a word. It keeps nothing secret: that nobody else may read the file does. */
  private static final char[] WORD = "wetside".toCharArray();

  private final Home home;
  private final Clock clock;

  /** Over one home. */
  public KeepAuthority(Home home, Clock clock) {
    this.home = home;
    this.clock = clock;
  }

  /**
   * The authority phones are told to trust.
   *
   * @param now by what this machine is asked for, in case it has to be made
   * @throws CannotDoException when its file is there but cannot be read
   */
  public Authority current(Addressed now) {
    return kept().orElseGet(() -> made(now));
  }

  /** A certificate for these names and addresses, as far as the authority may vouch for them. */
  public ServerCertificate certificate(Authority authority, Addressed asked) {
    return Signing.server(authority, asked, clock.instant());
  }

  private Optional<Authority> kept() {
    if (!Files.exists(home.authority())) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(home.authority())) {
      KeyStore store = KeyStore.getInstance("PKCS12");
      store.load(in, WORD);
      Authority kept =
          new Authority(
              (PrivateKey) store.getKey(ENTRY, WORD),
              (X509Certificate) store.getCertificate(ENTRY));
      Instant end = kept.certificate().getNotAfter().toInstant();
      return Optional.of(kept).filter(one -> clock.instant().plus(RENEWED_BEFORE).isBefore(end));
    } catch (IOException | GeneralSecurityException unreadable) {
      throw new CannotDoException(
          "The file "
              + home.authority()
              + " cannot be read. Take it away to have a new authority made; phones must then be"
              + " told to trust that one.",
          unreadable);
    }
  }

  private Authority made(Addressed now) {
    Instant at = clock.instant();
    String host = now.names().isEmpty() ? "home" : now.names().get(0);
    LocalDate day = LocalDate.ofInstant(at, clock.getZone());
    Authority fresh = Signing.authority("Wetside on " + host + " " + day, now, at);
    try {
      KeyStore store = KeyStore.getInstance("PKCS12");
      store.load(null, WORD);
      store.setKeyEntry(ENTRY, fresh.key(), WORD, new Certificate[] {fresh.certificate()});
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      store.store(bytes, WORD);
      home.make();
      PrivateFile.write(home.authority(), bytes.toByteArray());
    } catch (GeneralSecurityException refused) {
      throw new IllegalStateException("the authority could not be kept", refused);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    return fresh;
  }
}
