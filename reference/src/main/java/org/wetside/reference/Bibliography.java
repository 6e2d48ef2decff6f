package org.wetside.reference;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.source.Source;

/** Every source that a row cites: the file {@code sources.csv}. */
public final class Bibliography {
  private final Map<String, Source> byId;

  private Bibliography(Map<String, Source> byId) {
    this.byId = byId;
  }

  /** Reads the list of sources. */
  public static Bibliography open() {
    Map<String, Source> byId = new LinkedHashMap<>();
    for (CsvText.Line line : CsvText.read("sources").lines()) {
      Source source =
          new Source(
              line.cell("id"),
              line.cell("title"),
              line.cell("publication"),
              line.cell("date"),
              line.cell("address"),
              line.cell("obtained"),
              line.cell("notes"));
      if (byId.put(source.id(), source) != null) {
        throw new IllegalStateException("sources.csv lists " + source.id() + " twice");
      }
    }
    return new Bibliography(byId);
  }

  /** The source of that id. */
  public Optional<Source> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** All sources in the order of the file. */
  public Collection<Source> all() {
    return byId.values();
  }
}
