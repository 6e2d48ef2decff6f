package org.wetside.web.pairing;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.wetside.app.Wetside;
import org.wetside.app.authority.Addressed;
import org.wetside.app.authority.Authority;
import org.wetside.app.authority.KeepAuthority;
import org.wetside.app.authority.ServerCertificate;

/**
 * The certificate of the running server, made anew when this machine gets other addresses or the
 * certificate is about to end. The authority above it stays, so that phones notice nothing.
 */
public final class Encryption implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Encryption.class);
  private static final Duration RENEWED_BEFORE = Duration.ofDays(30);
  private static final int LOOK_SECONDS = 20;
  private static final String ENTRY = "server";

  /** Of a key store that only ever lives in memory. */
  private static final String WORD = "in memory";

  private final Wetside wetside;
  private final OwnAddresses own;
  private final Authority authority;
  private final SslContextFactory.Server context = new SslContextFactory.Server();
  private final ScheduledExecutorService watch =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "addresses");
            thread.setDaemon(true);
            return thread;
          });
  private Addressed asked;
  private ServerCertificate certificate;

  private Encryption(Wetside wetside, OwnAddresses own) {
    this.wetside = wetside;
    this.own = own;
    asked = asked(own);
    authority = wetside.keepAuthority().current(asked);
    certificate = wetside.keepAuthority().certificate(authority, asked);
    show(context);
  }

  /** Makes a certificate and goes on looking whether another is needed. */
  public static Encryption start(Wetside wetside, OwnAddresses own) {
    Encryption fresh = new Encryption(wetside, own);
    ScheduledFuture<?> unused =
        fresh.watch.scheduleWithFixedDelay(
            fresh::look, LOOK_SECONDS, LOOK_SECONDS, TimeUnit.SECONDS);
    return fresh;
  }

  /** What the connector encrypts with. */
  public SslContextFactory.Server context() {
    return context;
  }

  /** Whom phones are told to trust. */
  Authority authority() {
    return authority;
  }

  private void look() {
    try {
      renewWhere(asked(own));
    } catch (RuntimeException failed) {
      LOG.warn("the certificate could not be made anew", failed);
    }
  }

  /** Makes another certificate when these are not what the present one was made for. */
  synchronized boolean renewWhere(Addressed now) {
    boolean lasts = wetside.clock().instant().plus(RENEWED_BEFORE).isBefore(certificate.until());
    if (now.equals(asked) && lasts) {
      return false;
    }
    KeepAuthority keep = wetside.keepAuthority();
    certificate = keep.certificate(authority, now);
    asked = now;
    try {
      context.reload(unused -> show(context));
    } catch (Exception refused) { // what the library declares
      throw new IllegalStateException("the new certificate could not be shown", refused);
    }
    return true;
  }

  private static Addressed asked(OwnAddresses own) {
    return new Addressed(
        own.names(), own.literals().stream().map(one -> one.replaceAll("[\\[\\]]", "")).toList());
  }

  private void show(SslContextFactory.Server context) {
    try {
      KeyStore store = KeyStore.getInstance("PKCS12");
      store.load(null, null);
      store.setKeyEntry(
          ENTRY,
          certificate.key(),
          WORD.toCharArray(),
          certificate.chain().toArray(Certificate[]::new));
      context.setKeyStore(store);
      context.setKeyStorePassword(WORD);
    } catch (GeneralSecurityException | IOException refused) {
      throw new IllegalStateException("the certificate could not be shown", refused);
    }
  }

  @Override
  public void close() {
    watch.shutdownNow();
  }
}
