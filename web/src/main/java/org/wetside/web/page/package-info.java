/**
 * What every page shares: the sheet it is drawn on, the navigation between places, forms that keep
 * what was typed, the theme, static files under an address that changes with their content. In: a
 * request and a page's own model. Out: HTML. Open {@link org.wetside.web.page.Pages} first.
 */
@NullMarked
package org.wetside.web.page;

import org.jspecify.annotations.NullMarked;
