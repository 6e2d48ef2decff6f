/**
 * Certificates for the network at home: an authority that phones are told to trust, kept in the
 * home, and under it a certificate for the addresses this machine has now.
 *
 * <p>Enters: names and addresses of this machine. Leaves: key and certificates for a server. Open
 * {@link org.wetside.app.authority.KeepAuthority} first.
 */
@NullMarked
package org.wetside.app.authority;

import org.jspecify.annotations.NullMarked;
