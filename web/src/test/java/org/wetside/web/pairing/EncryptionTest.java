package org.wetside.web.pairing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.UncheckedIOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.authority.Addressed;
import org.wetside.web.OpenServer;
import org.wetside.web.Reach;
import org.wetside.web.WebOptions;

class EncryptionTest {
  private @TempDir Path home;
  private OpenServer server;
  private Device plain;
  private String secure;

  @BeforeEach
  void open() {
    server =
        new OpenServer(
            Wetside.open(home, Clock.systemUTC()), WebOptions.onPort(0).reaching(Reach.LAN_TLS));
    plain = Device.inTheNetwork(server.at("/").getPort());
    secure = server.inTheNetwork().get(0);
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void whoTrustsTheCertificateIsServedAndPaired() throws Exception {
    Device phone = new Device(secure, trusting(loaded()));
    assertThat(secure).startsWith("https://");
    assertThat(phone.get("/pair").statusCode()).isEqualTo(200);
    assertThat(phone.get("/").statusCode()).isEqualTo(403);

    String key = server.wetside().pairScreen().invite().key();
    HttpResponse<String> paired =
        phone.submit("/pair?key=" + key, "/pair", "key", key, "name", "phone");
    assertThat(paired.statusCode()).isEqualTo(303);
    assertThat(paired.headers().allValues("Set-Cookie"))
        .anyMatch(
            cookie ->
                cookie.startsWith("screen-")
                    && cookie.contains("Secure")
                    && cookie.contains("HttpOnly")
                    && cookie.contains("SameSite=Strict"));
    assertThat(phone.get("/drawer").statusCode()).isEqualTo(200);
    assertThat(phone.submit("/drawer", "/drawer/line", "line", "135 36 TRI-X 400").statusCode())
        .isEqualTo(303);
  }

  @Test
  void whoDoesNotTrustItRefuses() {
    Device stranger = new Device(secure);
    assertThatThrownBy(() -> stranger.get("/pair"))
        .isInstanceOf(UncheckedIOException.class)
        .hasCauseInstanceOf(SSLHandshakeException.class);
  }

  @Test
  void anotherHomeIsNotTrustedWithIt(@TempDir Path other) throws Exception {
    X509Certificate ours = loaded();
    try (OpenServer second =
        new OpenServer(
            Wetside.open(other, Clock.systemUTC()), WebOptions.onPort(0).reaching(Reach.LAN_TLS))) {
      Device phone = new Device(second.inTheNetwork().get(0), trusting(ours));
      assertThatThrownBy(() -> phone.get("/pair"))
          .isInstanceOf(UncheckedIOException.class)
          .hasCauseInstanceOf(SSLHandshakeException.class);
    }
  }

  /** The open port leads to the certificate and to nothing else, a paired screen too. */
  @Test
  void inTheOpenThereIsOnlyTheCertificate() throws Exception {
    HttpResponse<String> page = plain.get("/certificate");
    assertThat(page.statusCode()).isEqualTo(200);
    String fingerprint = server.wetside().keepAuthority().current(nothing()).fingerprint();
    assertThat(page.body()).contains(fingerprint.substring(0, 11), secure + "/pair");
    assertThat(page.body()).doesNotContain("<nav", "<svg class=\"qr\"");
    assertThat(server.get("/certificate").body()).contains("<svg class=\"qr\"");
    assertThat(loaded())
        .isEqualTo(server.wetside().keepAuthority().current(nothing()).certificate());

    String key = server.wetside().pairScreen().invite().key();
    for (String path : List.of("/", "/pair", "/pair?key=" + key, "/api/rolls", "/nowhere")) {
      HttpResponse<String> answer = plain.get(path);
      assertThat(answer.statusCode()).as(path).isEqualTo(303);
      assertThat(answer.headers().firstValue("Location").orElseThrow()).endsWith("/certificate");
    }
    plain.submit("/certificate", "/pair", "key", key, "name", "phone");
    assertThat(server.wetside().findScreens().all()).isEmpty();
    assertThat(server.wetside().pairScreen().invitation()).isPresent();
  }

  @Test
  void withoutItThereIsNoCertificate(@TempDir Path other) {
    try (OpenServer open =
        new OpenServer(
            Wetside.open(other, Clock.systemUTC()), WebOptions.onPort(0).reaching(Reach.LAN))) {
      HttpResponse<String> answer = open.get("/certificate");
      assertThat(answer.statusCode()).isEqualTo(404);
      assertThat(answer.body()).contains("without --tls");
    }
  }

  @Test
  void otherAddressesGetAnotherCertificateOfTheSameAuthority() throws Exception {
    Encryption encryption = Encryption.start(server.wetside(), new OwnAddresses());
    Server jetty = new Server();
    ServerConnector connector =
        new ServerConnector(jetty, encryption.context(), new HttpConnectionFactory());
    jetty.addConnector(connector);
    jetty.start();
    try {
      X509Certificate before = shown(connector.getLocalPort());
      Addressed moved = new Addressed(List.of("kitchen.local"), List.of("10.9.8.7"));
      assertThat(encryption.renewWhere(moved)).isTrue();
      X509Certificate after = shown(connector.getLocalPort());
      assertThat(after).isNotEqualTo(before);
      assertThat(Objects.requireNonNull(after.getSubjectAlternativeNames()).toString())
          .contains("10.9.8.7", "kitchen.local");
      after.verify(encryption.authority().certificate().getPublicKey());
      assertThat(encryption.renewWhere(moved)).isFalse();
    } finally {
      jetty.stop();
      encryption.close();
    }
  }

  private static Addressed nothing() {
    return new Addressed(List.of(), List.of());
  }

  /** What a server at that port shows to somebody who trusts the authority of this home. */
  private X509Certificate shown(int port) throws Exception {
    try (SSLSocket socket =
        (SSLSocket) context(loaded()).getSocketFactory().createSocket("127.0.0.1", port)) {
      socket.startHandshake();
      return (X509Certificate) socket.getSession().getPeerCertificates()[0];
    }
  }

  /** As a phone loads it. */
  private X509Certificate loaded() throws Exception {
    HttpResponse<byte[]> file =
        plain
            .client()
            .send(
                plain.request(CertificateRoutes.FILE).build(),
                HttpResponse.BodyHandlers.ofByteArray());
    assertThat(file.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/x-x509-ca-cert");
    return (X509Certificate)
        CertificateFactory.getInstance("X.509")
            .generateCertificate(new ByteArrayInputStream(file.body()));
  }

  private static HttpClient.Builder trusting(X509Certificate authority) throws Exception {
    return HttpClient.newBuilder().sslContext(context(authority));
  }

  private static SSLContext context(X509Certificate authority) throws Exception {
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    trusted.setCertificateEntry("wetside", authority);
    TrustManagerFactory trust = TrustManagerFactory.getInstance("PKIX");
    trust.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, trust.getTrustManagers(), null);
    return context;
  }
}
