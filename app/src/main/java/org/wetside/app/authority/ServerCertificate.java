package org.wetside.app.authority;

import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.List;

/**
 * What a server shows for its addresses. Made anew at each start and never kept.
 *
 * @param key of the server
 * @param chain its certificate and that of the authority
 */
public record ServerCertificate(PrivateKey key, List<X509Certificate> chain) {
  /** Keeps an unmodifiable copy. */
  public ServerCertificate {
    chain = List.copyOf(chain);
  }

  /** When it ends. */
  public Instant until() {
    return chain.get(0).getNotAfter().toInstant();
  }
}
