package org.wetside.web.paper;

import java.util.List;

/**
 * Labels of bottles.
 *
 * @param labels in the order they were asked for
 */
public record LabelsView(List<LabelView> labels) {
  /** Keeps an unmodifiable copy. */
  public LabelsView {
    labels = List.copyOf(labels);
  }
}
