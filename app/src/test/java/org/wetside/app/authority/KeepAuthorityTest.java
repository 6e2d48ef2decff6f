package org.wetside.app.authority;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.security.interfaces.ECPublicKey;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Date;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.CannotDoException;
import org.wetside.app.home.Home;

class KeepAuthorityTest {
  private static final Instant EVENING = Instant.parse("2026-01-14T19:00:00Z");
  private static final Addressed KITCHEN =
      new Addressed(
          List.of("kitchen", "kitchen.local"), List.of("192.168.1.5", "fd00:0:0:0:0:0:0:2"));

  private @TempDir Path folder;

  @Test
  void itIsMadeOnceAndReadBack() throws IOException {
    Authority made = at(EVENING).current(KITCHEN);
    assertThat(at(EVENING.plusSeconds(60)).current(KITCHEN).certificate())
        .isEqualTo(made.certificate());
    assertThat(made.fingerprint()).matches("([0-9A-F]{2}:){31}[0-9A-F]{2}");
    Path file = new Home(folder).authority();
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
  }

  @Test
  void itIsAnAuthorityOnP256ForThreeYears() {
    X509Certificate certificate = at(EVENING).current(KITCHEN).certificate();
    assertThat(certificate.getBasicConstraints()).isZero();
    assertThat(certificate.getKeyUsage()[5]).as("signs certificates").isTrue();
    assertThat(
            ((ECPublicKey) certificate.getPublicKey())
                .getParams()
                .getCurve()
                .getField()
                .getFieldSize())
        .isEqualTo(256);
    assertThat(certificate.getNotAfter().toInstant())
        .isEqualTo(EVENING.plus(Duration.ofDays(1095)));
    assertThat(certificate.getCriticalExtensionOIDs()).contains("2.5.29.30");
    assertThat(certificate.getSubjectX500Principal().getName())
        .isEqualTo("CN=Wetside on kitchen 2026-01-14");
  }

  @Test
  void anotherIsMadeAMonthBeforeItEnds() {
    Authority first = at(EVENING).current(KITCHEN);
    Instant end = first.certificate().getNotAfter().toInstant();
    assertThat(at(end.minus(Duration.ofDays(31))).current(KITCHEN).certificate())
        .isEqualTo(first.certificate());
    assertThat(at(end.minus(Duration.ofDays(30))).current(KITCHEN).certificate())
        .isNotEqualTo(first.certificate());
  }

  @Test
  void aSpoiledFileIsNamedAndLeft() throws IOException {
    Path file = new Home(folder).authority();
    Files.writeString(file, "not a key");
    assertThatThrownBy(() -> at(EVENING).current(KITCHEN))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("authority.p12");
    assertThat(Files.readString(file)).isEqualTo("not a key");
  }

  @Test
  void theServerIsVouchedForByNamesAndAddresses() throws GeneralSecurityException {
    KeepAuthority keep = at(EVENING);
    Authority authority = keep.current(KITCHEN);
    ServerCertificate server = keep.certificate(authority, KITCHEN);
    assertThat(namesOf(server))
        .contains("kitchen", "kitchen.local", "192.168.1.5", "fd00:0:0:0:0:0:0:2", "localhost");
    assertThat(server.until()).isEqualTo(EVENING.plus(Duration.ofDays(90)));
    assertThat(server.chain().get(0).getExtendedKeyUsage()).containsExactly("1.3.6.1.5.5.7.3.1");
    assertThatCode(() -> validate(authority, server)).doesNotThrowAnyException();
  }

  /** A laptop in another Wi-Fi: the authority stays, the phone notices nothing. */
  @Test
  void otherPrivateAddressesAreVouchedForByTheSame() {
    KeepAuthority keep = at(EVENING);
    Authority authority = keep.current(KITCHEN);
    Addressed club = new Addressed(List.of("kitchen"), List.of("10.7.0.3"));
    ServerCertificate server = keep.certificate(authority, club);
    assertThat(namesOf(server)).contains("10.7.0.3").doesNotContain("192.168.1.5");
    assertThatCode(() -> validate(authority, server)).doesNotThrowAnyException();
  }

  @Test
  void theWorldOutsideIsLeftOut() {
    KeepAuthority keep = at(EVENING);
    Authority authority = keep.current(KITCHEN);
    Addressed outside =
        new Addressed(List.of("kitchen", "bank.example"), List.of("192.168.1.5", "203.0.113.9"));
    assertThat(namesOf(keep.certificate(authority, outside)))
        .contains("kitchen", "192.168.1.5")
        .doesNotContain("bank.example", "203.0.113.9");
  }

  /** What a thief of the key would make is refused by whoever checks it. */
  @Test
  void whatAStolenKeySignsForTheWorldOutsideIsRefused() {
    Authority home = at(EVENING).current(KITCHEN);
    ServerCertificate asOurs =
        Signing.signedFor(
            home, List.of(new GeneralName(GeneralName.dNSName, "bank.example")), EVENING);
    assertThat(namesOf(asOurs)).containsExactly("bank.example");
    assertThatThrownBy(() -> validate(home, asOurs))
        .isInstanceOf(CertPathValidatorException.class)
        .hasMessageContaining("name constraints");
  }

  private KeepAuthority at(Instant now) {
    return new KeepAuthority(new Home(folder), Clock.fixed(now, ZoneOffset.UTC));
  }

  private static List<String> namesOf(ServerCertificate server) {
    try {
      Collection<List<?>> names =
          Objects.requireNonNull(server.chain().get(0).getSubjectAlternativeNames());
      return names.stream().map(one -> String.valueOf(one.get(1))).toList();
    } catch (GeneralSecurityException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  /**
   * By the checks of the Java platform, not by the library that made it. The platform reads no
   * constraints from the certificate it starts from, so ours is put under another for this.
   */
  private static void validate(Authority authority, ServerCertificate server)
      throws GeneralSecurityException {
    KeyPair root = KeyPairGenerator.getInstance("EC").generateKeyPair();
    PKIXParameters parameters =
        new PKIXParameters(Set.of(new TrustAnchor("CN=root", root.getPublic(), null)));
    parameters.setRevocationEnabled(false);
    parameters.setDate(Date.from(EVENING));
    CertPathValidator.getInstance("PKIX")
        .validate(
            CertificateFactory.getInstance("X.509")
                .generateCertPath(List.of(server.chain().get(0), under(root, authority))),
            parameters);
  }

  private static X509Certificate under(KeyPair root, Authority authority)
      throws GeneralSecurityException {
    X509Certificate ours = authority.certificate();
    try {
      JcaX509v3CertificateBuilder builder =
          new JcaX509v3CertificateBuilder(
              new X500Principal("CN=root"),
              BigInteger.ONE,
              ours.getNotBefore(),
              ours.getNotAfter(),
              ours.getSubjectX500Principal(),
              ours.getPublicKey());
      JcaX509CertificateHolder held = new JcaX509CertificateHolder(ours);
      builder.copyAndAddExtension(Extension.basicConstraints, true, held);
      builder.copyAndAddExtension(Extension.keyUsage, true, held);
      builder.copyAndAddExtension(Extension.nameConstraints, true, held);
      return new JcaX509CertificateConverter()
          .getCertificate(
              builder.build(
                  new JcaContentSignerBuilder("SHA256withECDSA").build(root.getPrivate())));
    } catch (OperatorCreationException refused) {
      throw new GeneralSecurityException(refused);
    }
  }
}
