package org.wetside.web.strip;

import org.wetside.core.source.Standing;

/**
 * One line of the table of results.
 *
 * @param name what it is
 * @param value as it is read; {@code not determinable} where so
 * @param band of 90 %, or why there is none
 * @param standing how it is known
 * @param source where the rule stands
 */
public record ResultRow(String name, String value, String band, Standing standing, String source) {}
