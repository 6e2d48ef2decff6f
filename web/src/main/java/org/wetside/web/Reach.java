package org.wetside.web;

/** From where the program can be asked. */
public enum Reach {
  /** From this machine only. */
  LOOPBACK,
  /** From paired screens on the same network too, unencrypted. */
  LAN,
  /** The same, encrypted, under a certificate that each screen is told to trust. */
  LAN_TLS;

  /** Whether other devices can ask at all. */
  public boolean isLan() {
    return this != LOOPBACK;
  }
}
