/** The invented evenings, looked at afterwards. */
@NullMarked
package org.wetside.app.demo;

import org.jspecify.annotations.NullMarked;
