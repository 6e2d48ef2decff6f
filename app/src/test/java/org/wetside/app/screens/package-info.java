/** Tests of letting screens in. */
@NullMarked
package org.wetside.app.screens;

import org.jspecify.annotations.NullMarked;
