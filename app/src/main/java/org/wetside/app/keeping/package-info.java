/**
 * Nothing is lost: copies of the data, made by hand or every day by the server, putting one back,
 * and checking that what is stored is whole and agrees with itself.
 *
 * <p>Enters: a home, a file, the present moment. Leaves: files whole or not at all, and findings in
 * words. Open {@link org.wetside.app.keeping.MakeBackup} first.
 */
@NullMarked
package org.wetside.app.keeping;

import org.jspecify.annotations.NullMarked;
