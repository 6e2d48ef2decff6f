package org.wetside.web.strip;

import java.util.List;
import org.wetside.web.page.Sheet;

/**
 * Model of the place Curves.
 *
 * @param sheet the sheet
 * @param groups the strips on file
 */
public record StripsPage(Sheet sheet, List<StripGroup> groups) {
  /** How many strips there are. */
  public int count() {
    return groups.stream().mapToInt(group -> group.lines().size()).sum();
  }

  /** The first film of which several times were developed; empty when there is none. */
  public List<StripGroup> families() {
    return groups.stream().filter(StripGroup::isFamily).toList();
  }
}
