package org.wetside.app.checks;

import java.util.List;
import org.wetside.core.plan.ClosingItem;

/**
 * What is asked when the tank is closed this time.
 *
 * @param items in the order in which hands meet them
 * @param whole whether it is the whole list, and not only what is always asked
 * @param because why it is whole or short, in a sentence
 */
public record Closing(List<ClosingItem> items, boolean whole, String because) {
  public Closing {
    items = List.copyOf(items);
  }

  List<Check> checks() {
    return items.stream()
        .map(item -> Check.of(CheckGroup.CLOSING, item.id(), item.text(), CheckState.OPEN, ""))
        .toList();
  }
}
