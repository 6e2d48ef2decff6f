/**
 * Who is let in over the network: codes that are shown on one screen and typed or photographed on
 * another, and the screens that were let in by one.
 *
 * <p>Enters: the secret of a code, or the key a screen was given. Leaves: a screen that is let in,
 * or why not. Open {@link org.wetside.app.screens.PairScreen} first.
 */
@NullMarked
package org.wetside.app.screens;

import org.jspecify.annotations.NullMarked;
