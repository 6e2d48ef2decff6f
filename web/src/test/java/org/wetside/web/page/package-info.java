/** What all pages share, over a real server. */
@NullMarked
package org.wetside.web.page;

import org.jspecify.annotations.NullMarked;
