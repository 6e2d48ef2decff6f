/**
 * The door to the network: which device may ask, how a screen is paired, which screens are, and the
 * certificate they may trust. In: requests, and the addresses of this machine. Out: a request let
 * on, or the pairing page. Open {@link org.wetside.web.pairing.Doorway} first.
 */
@NullMarked
package org.wetside.web.pairing;

import org.jspecify.annotations.NullMarked;
