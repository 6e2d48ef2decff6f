/** Tests of the door to the network, over a real address of this machine. */
@NullMarked
package org.wetside.web.pairing;

import org.jspecify.annotations.NullMarked;
