package org.wetside.web.density;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Addresses of the pages. */
public final class DensityAddress {
  /** The instruments and tablets. */
  public static final String INSTRUMENTS = "/curves/instruments";

  /** The tablets, one page each. */
  public static final String TABLETS = "/curves/tablets";

  /** The pictures. */
  public static final String PATCHES = "/curves/patches";

  private DensityAddress() {}

  /** Of an instrument. */
  public static String instrument(String name) {
    return INSTRUMENTS + "/" + encoded(name);
  }

  /** Of a tablet. */
  public static String tablet(String name) {
    return TABLETS + "/" + encoded(name);
  }

  /** Of a picture. */
  public static String picture(String name) {
    return PATCHES + "/" + encoded(name);
  }

  private static String encoded(String name) {
    return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
  }
}
