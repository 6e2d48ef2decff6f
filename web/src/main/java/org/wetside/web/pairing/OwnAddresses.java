package org.wetside.web.pairing;

import java.io.UncheckedIOException;
import java.net.DatagramSocket;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.InterfaceAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What this machine is called on the network it is in, looked up anew each time: a laptop changes
 * its Wi-Fi while the program runs.
 */
public final class OwnAddresses {
  /** Of a block kept for documentation: it stands for "out of here", nothing is ever sent to it. */
  private static final String OUT_OF_HERE = "198.51.100.1";

  private static final int ANY_PORT = 9;

  private @Nullable String name;

  /**
   * The addresses others may reach, the one this machine would itself go out by first; those of the
   * link alone, which a browser cannot write, left out.
   */
  public List<InetAddress> all() {
    Set<InetAddress> all = new LinkedHashSet<>();
    List<InetAddress> reachable =
        interfaces()
            .flatMap(one -> one.getInterfaceAddresses().stream())
            .map(InterfaceAddress::getAddress)
            .filter(one -> !one.isLinkLocalAddress() && !one.isMulticastAddress())
            .toList();
    InetAddress outward = outward();
    if (outward != null && reachable.contains(outward)) {
      all.add(outward);
    }
    reachable.stream().filter(one -> !(one instanceof Inet6Address)).forEach(all::add);
    all.addAll(reachable);
    return List.copyOf(all);
  }

  /** As they stand in an address, an IPv6 one in brackets. */
  public List<String> literals() {
    return all().stream().map(OwnAddresses::literal).toList();
  }

  /** The names of this machine: bare, and as it is announced on a network without a name server. */
  public List<String> names() {
    String known = name;
    if (known == null) {
      known = hostName();
      name = known;
    }
    return known.isEmpty() ? List.of() : List.of(known, known + ".local");
  }

  /** Whether the host of an address means this machine, seen from the network. */
  boolean isOwn(String host) {
    String bare = host.toLowerCase(Locale.ROOT);
    return names().contains(bare) || literals().contains(bare);
  }

  /** Whether a device is in the same network as this machine, or in a private one. */
  boolean isNearby(InetAddress other) {
    return other.isLinkLocalAddress()
        || other.isSiteLocalAddress()
        || Subnet.UNIQUE_LOCAL.contains(other)
        || interfaces()
            .flatMap(one -> one.getInterfaceAddresses().stream())
            .anyMatch(own -> Subnet.of(own).contains(other));
  }

  static String literal(InetAddress address) {
    String text = address.getHostAddress();
    int zone = text.indexOf('%');
    String bare = zone < 0 ? text : text.substring(0, zone);
    return address instanceof Inet6Address ? "[" + Subnet.shortened(bare) + "]" : bare;
  }

  private static Stream<NetworkInterface> interfaces() {
    try {
      List<NetworkInterface> up = new ArrayList<>();
      for (NetworkInterface one : NetworkInterface.networkInterfaces().toList()) {
        if (one.isUp() && !one.isLoopback()) {
          up.add(one);
        }
      }
      return up.stream();
    } catch (SocketException unreadable) {
      throw new UncheckedIOException("the addresses of this machine cannot be read", unreadable);
    }
  }

  private static @Nullable InetAddress outward() {
    try (DatagramSocket socket = new DatagramSocket()) {
      socket.connect(new InetSocketAddress(OUT_OF_HERE, ANY_PORT));
      return socket.getLocalAddress();
    } catch (SocketException | UncheckedIOException noWayOut) {
      return null;
    }
  }

  private static String hostName() {
    try {
      String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
      int dot = name.indexOf('.');
      String bare = dot < 0 ? name : name.substring(0, dot);
      return bare.equals("localhost") || !bare.matches("[a-z0-9-]+") ? "" : bare;
    } catch (UnknownHostException nameless) {
      return "";
    }
  }
}
