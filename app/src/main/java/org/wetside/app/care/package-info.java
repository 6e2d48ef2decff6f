/**
 * What is said of a bath at the moment it is handled: the cautions on file for what is in it, and
 * what speaks against pouring it straight after the bath before.
 *
 * <p>Enters: steps with the letters of their bottles, and the shelf. Leaves: for each bath its
 * cautions, at least one, and its objections, each with a source. Open {@link
 * org.wetside.app.care.CareForSteps} first.
 */
@NullMarked
package org.wetside.app.care;

import org.jspecify.annotations.NullMarked;
