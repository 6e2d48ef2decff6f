package org.wetside.web.pairing;

import org.wetside.app.screens.Invitation;

/** The address that a drawn code holds. */
final class PairAddress {
  private PairAddress() {}

  /** On that server, with the key of the code. */
  static String of(String server, Invitation code) {
    return server + "/pair?key=" + code.key();
  }
}
