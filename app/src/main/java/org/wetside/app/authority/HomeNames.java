package org.wetside.app.authority;

import java.util.ArrayList;
import java.util.List;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.NameConstraintValidatorException;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.asn1.x509.PKIXNameConstraintValidator;

/**
 * The names and addresses the authority may vouch for (RFC 5280, 4.2.1.10): those of networks at
 * home. Whoever stole its key could pass for no site of the world outside.
 */
final class HomeNames {
  /** Loopback, private and link-local blocks (RFC 1918, 3927, 4193, 4291, 5735). */
  private static final List<String> BLOCKS =
      List.of(
          "127.0.0.0/8",
          "10.0.0.0/8",
          "172.16.0.0/12",
          "192.168.0.0/16",
          "169.254.0.0/16",
          "::1/128",
          "fc00::/7",
          "fe80::/10");

  /** Names announced on the link alone (RFC 6762), and this machine to itself. */
  private static final List<String> NAMES = List.of("local", "localhost");

  private HomeNames() {}

  /** The blocks, and what this machine has now beside them. */
  static NameConstraints with(Addressed now) {
    List<GeneralSubtree> permitted = new ArrayList<>();
    NAMES.forEach(one -> permitted.add(tree(GeneralName.dNSName, one)));
    now.names().stream()
        .filter(one -> !one.endsWith(".local"))
        .forEach(one -> permitted.add(tree(GeneralName.dNSName, one)));
    BLOCKS.forEach(one -> permitted.add(tree(GeneralName.iPAddress, one)));
    now.addresses().forEach(one -> permitted.add(tree(GeneralName.iPAddress, one + whole(one))));
    return new NameConstraints(permitted.toArray(GeneralSubtree[]::new), null);
  }

  /** Those of the names that the constraints allow. */
  static List<GeneralName> allowed(NameConstraints constraints, Addressed asked) {
    List<GeneralName> names = new ArrayList<>();
    asked.names().forEach(one -> names.add(new GeneralName(GeneralName.dNSName, one)));
    names.add(new GeneralName(GeneralName.dNSName, "localhost"));
    asked.addresses().forEach(one -> names.add(new GeneralName(GeneralName.iPAddress, one)));
    names.add(new GeneralName(GeneralName.iPAddress, "127.0.0.1"));
    PKIXNameConstraintValidator validator = new PKIXNameConstraintValidator();
    validator.intersectPermittedSubtree(constraints.getPermittedSubtrees());
    return names.stream().filter(one -> isAllowed(validator, one)).toList();
  }

  private static boolean isAllowed(PKIXNameConstraintValidator validator, GeneralName name) {
    try {
      validator.checkPermitted(name);
      return true;
    } catch (NameConstraintValidatorException outside) {
      return false;
    }
  }

  private static GeneralSubtree tree(int kind, String name) {
    return new GeneralSubtree(new GeneralName(kind, name));
  }

  private static String whole(String address) {
    return address.indexOf(':') >= 0 ? "/128" : "/32";
  }
}
