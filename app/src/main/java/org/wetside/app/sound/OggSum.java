package org.wetside.app.sound;

/** The checksum of an Ogg page (RFC 3533, 6): CRC with polynomial 0x04c11db7, nothing reflected. */
final class OggSum {
  private static final int POLYNOMIAL = 0x04c11db7;
  private static final int[] TABLE = table();

  private OggSum() {}

  static int of(byte[] page) {
    int sum = 0;
    for (byte one : page) {
      sum = sum << 8 ^ TABLE[(sum >>> 24 ^ one) & 0xff];
    }
    return sum;
  }

  private static int[] table() {
    int[] table = new int[256];
    for (int i = 0; i < table.length; i++) {
      int rest = i << 24;
      for (int bit = 0; bit < 8; bit++) {
        rest = rest << 1 ^ (rest < 0 ? POLYNOMIAL : 0);
      }
      table[i] = rest;
    }
    return table;
  }
}
