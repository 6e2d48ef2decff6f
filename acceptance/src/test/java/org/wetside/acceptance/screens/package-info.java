/** A second screen over the network: a real browser on a real address of this machine. */
@NullMarked
package org.wetside.acceptance.screens;

import org.jspecify.annotations.NullMarked;
