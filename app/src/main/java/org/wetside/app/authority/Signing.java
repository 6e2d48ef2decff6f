package org.wetside.app.authority;

import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** Makes and signs certificates: keys on the curve P-256, SHA-256 with ECDSA. */
final class Signing {
  /** Three years: then each phone is told anew. */
  static final Duration AUTHORITY_LASTS = Duration.ofDays(3 * 365);

  /** Short, because it is made anew at each start; phones refuse more than 825 days. */
  static final Duration SERVER_LASTS = Duration.ofDays(90);

  /** Clocks of phones and of this machine differ. */
  private static final Duration EARLIER = Duration.ofDays(1);

  private static final int SERIAL_BITS = 120;
  private static final SecureRandom CHANCE = new SecureRandom();

  private Signing() {}

  static Authority authority(String name, Addressed now, Instant at) {
    try {
      KeyPair pair = keys();
      X500Principal self = new X500Principal("CN=" + name);
      X509v3CertificateBuilder builder = builder(self, self, pair, at, AUTHORITY_LASTS);
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
      builder.addExtension(
          Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
      builder.addExtension(Extension.nameConstraints, true, HomeNames.with(now));
      builder.addExtension(
          Extension.subjectKeyIdentifier,
          false,
          new JcaX509ExtensionUtils().createSubjectKeyIdentifier(pair.getPublic()));
      return new Authority(pair.getPrivate(), signed(builder, pair));
    } catch (GeneralSecurityException | IOException refused) {
      throw new IllegalStateException("the authority could not be made", refused);
    }
  }

  static ServerCertificate server(Authority authority, Addressed asked, Instant at) {
    try {
      return signedFor(authority, HomeNames.allowed(constraints(authority), asked), at);
    } catch (GeneralSecurityException unreadable) {
      throw new IllegalStateException("the authority does not say for whom it is", unreadable);
    }
  }

  /** For any names; whether the authority may vouch for them is found by who checks. */
  static ServerCertificate signedFor(Authority authority, List<GeneralName> names, Instant at) {
    try {
      KeyPair pair = keys();
      X509v3CertificateBuilder builder =
          builder(
              authority.certificate().getSubjectX500Principal(),
              new X500Principal("CN=Wetside"),
              pair,
              at,
              SERVER_LASTS);
      JcaX509ExtensionUtils keyIds = new JcaX509ExtensionUtils();
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
      builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
      builder.addExtension(
          Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
      builder.addExtension(
          Extension.subjectAlternativeName,
          false,
          new GeneralNames(names.toArray(GeneralName[]::new)));
      builder.addExtension(
          Extension.authorityKeyIdentifier,
          false,
          keyIds.createAuthorityKeyIdentifier(authority.certificate()));
      X509Certificate certificate =
          signed(builder, new KeyPair(authority.certificate().getPublicKey(), authority.key()));
      return new ServerCertificate(
          pair.getPrivate(), List.of(certificate, authority.certificate()));
    } catch (GeneralSecurityException | IOException refused) {
      throw new IllegalStateException("the certificate of the server could not be made", refused);
    }
  }

  private static NameConstraints constraints(Authority authority) throws GeneralSecurityException {
    return NameConstraints.getInstance(
        new JcaX509CertificateHolder(authority.certificate())
            .getExtension(Extension.nameConstraints)
            .getParsedValue());
  }

  private static KeyPair keys() throws GeneralSecurityException {
    KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
    generator.initialize(new ECGenParameterSpec("secp256r1"), CHANCE);
    return generator.generateKeyPair();
  }

  private static X509v3CertificateBuilder builder(
      X500Principal issuer, X500Principal subject, KeyPair pair, Instant at, Duration lasts) {
    return new JcaX509v3CertificateBuilder(
        issuer,
        new BigInteger(SERIAL_BITS, CHANCE),
        Date.from(at.minus(EARLIER)),
        Date.from(at.plus(lasts)),
        subject,
        pair.getPublic());
  }

  private static X509Certificate signed(X509v3CertificateBuilder builder, KeyPair by)
      throws GeneralSecurityException {
    try {
      return new JcaX509CertificateConverter()
          .getCertificate(
              builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(by.getPrivate())));
    } catch (OperatorCreationException refused) {
      throw new GeneralSecurityException(refused);
    }
  }
}
