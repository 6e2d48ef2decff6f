package org.wetside.web.pairing;

import java.net.InetAddress;
import java.net.InterfaceAddress;
import java.net.UnknownHostException;

/**
 * The addresses that begin with the same bits.
 *
 * @param first any of them
 * @param bits how many are the same
 */
record Subnet(InetAddress first, int bits) {
  /** Private addresses of IPv6 (RFC 4193): fc00::/7. */
  static final Subnet UNIQUE_LOCAL = new Subnet(address("fc00::"), 7);

  /** The one in which this machine has that address. */
  static Subnet of(InterfaceAddress own) {
    return new Subnet(own.getAddress(), own.getNetworkPrefixLength());
  }

  /** Whether it is one of them. */
  boolean contains(InetAddress other) {
    byte[] here = first.getAddress();
    byte[] there = other.getAddress();
    if (here.length != there.length) {
      return false;
    }
    for (int bit = 0; bit < bits; bit++) {
      int mask = 0x80 >> (bit % 8);
      if (((here[bit / 8] ^ there[bit / 8]) & mask) != 0) {
        return false;
      }
    }
    return true;
  }

  /** An address written as figures; nothing is looked up for it. */
  static InetAddress address(String figures) {
    try {
      return InetAddress.getByName(figures);
    } catch (UnknownHostException notFigures) {
      throw new IllegalArgumentException(figures, notFigures);
    }
  }

  /** As browsers write an IPv6 address (RFC 5952): the longest run of zeros left out. */
  static String shortened(String address) {
    String[] groups = address.split(":", -1);
    int from = -1;
    int most = 1;
    for (int i = 0; i < groups.length; i++) {
      int length = 0;
      while (i + length < groups.length && groups[i + length].equals("0")) {
        length++;
      }
      if (length > most) {
        most = length;
        from = i;
      }
    }
    if (from < 0) {
      return address;
    }
    String before = String.join(":", java.util.Arrays.copyOfRange(groups, 0, from));
    String after =
        String.join(":", java.util.Arrays.copyOfRange(groups, from + most, groups.length));
    return before + "::" + after;
  }
}
