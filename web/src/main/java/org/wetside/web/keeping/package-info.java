/**
 * Backups as they are seen: the page of those the home keeps, their addresses under {@code /api},
 * and what a check found. Open {@link org.wetside.web.keeping.BackupRoutes} first.
 */
@NullMarked
package org.wetside.web.keeping;

import org.jspecify.annotations.NullMarked;
