package org.wetside.web.paper;

import java.util.List;
import org.wetside.web.pairing.Door;

/** Where the codes on paper lead. */
final class ServerAddressOnPaper {
  private ServerAddressOnPaper() {}

  /** A phone can only follow an address of the network; this machine alone needs none. */
  static String of(Door door) {
    List<String> others = door.reach().isLan() ? door.addresses() : List.of();
    return others.isEmpty()
        ? "http://localhost:" + door.port().getAsInt()
        : others.get(0).replaceFirst("/$", "");
  }
}
