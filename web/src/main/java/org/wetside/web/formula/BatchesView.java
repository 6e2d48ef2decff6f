package org.wetside.web.formula;

import java.util.List;

/**
 * The newest hundred batches.
 *
 * @param batches newest first
 */
public record BatchesView(List<BatchView> batches) {}
