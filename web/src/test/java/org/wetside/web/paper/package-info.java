/** Papers over the real server and database, read back as a printer and a phone would. */
@NullMarked
package org.wetside.web.paper;

import org.jspecify.annotations.NullMarked;
