/**
 * What is printed. A run as the Bench knows it, or a load as it would be run, comes in; out comes
 * the run sheet as a record, as plain text and as a PDF of one page with a code that leads back.
 * Open {@link org.wetside.web.paper.SheetRoutes} first.
 *
 * <p>Nothing of the PDF renderer is touched before somebody asks for a PDF.
 */
@NullMarked
package org.wetside.web.paper;

import org.jspecify.annotations.NullMarked;
