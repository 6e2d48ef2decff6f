package org.wetside.app.authority;

import java.util.List;

/**
 * By what a server is asked for.
 *
 * @param names host names, in small letters
 * @param addresses in figures, without brackets
 */
public record Addressed(List<String> names, List<String> addresses) {
  /** Keeps unmodifiable copies. */
  public Addressed {
    names = List.copyOf(names);
    addresses = List.copyOf(addresses);
  }
}
