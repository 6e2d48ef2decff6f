/**
 * Pictures that are measured: linear 16-bit TIFF files, read by rectangle.
 *
 * <p>Enters: a file, rectangles. Leaves: what the file says of itself, means and deviations of its
 * pixels, an 8-bit view for the eye alone, or the reason why it cannot be measured. Open {@link
 * org.wetside.app.picture.TiffPicture} first.
 */
@NullMarked
package org.wetside.app.picture;

import org.jspecify.annotations.NullMarked;
