package org.wetside.web.pairing;

import org.wetside.app.screens.Screen;

/**
 * A paired screen.
 *
 * @param id its number
 * @param name what its owner calls it
 * @param pairedAt when it was let in
 * @param seenAt when it last asked for something, to the minute
 */
public record PairedScreenView(long id, String name, String pairedAt, String seenAt) {
  static PairedScreenView of(Screen screen) {
    return new PairedScreenView(
        screen.id(), screen.name(), screen.pairedAt().toString(), screen.seenAt().toString());
  }
}
