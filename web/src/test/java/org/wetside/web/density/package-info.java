/** Instruments and patches over HTTP, with a real server and real files. */
@NullMarked
package org.wetside.web.density;

import org.jspecify.annotations.NullMarked;
