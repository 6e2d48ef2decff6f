/**
 * Cited figures of the trade as files, and the readers that turn each file into core types.
 *
 * <p>Enters: the CSV files beside this package, grouped by place ({@code development}, {@code
 * baths}, {@code curves}, {@code negatives}, {@code checks}) with one bibliography, {@code
 * sources.csv}. Leaves: core types with the citation and standing of their row. Open {@link
 * org.wetside.reference.ReferenceTable} first; it describes how a file is laid out.
 */
@NullMarked
package org.wetside.reference;

import org.jspecify.annotations.NullMarked;
