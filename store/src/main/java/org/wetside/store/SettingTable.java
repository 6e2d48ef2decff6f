package org.wetside.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What the user chose, by name; what the values mean is for the use case that owns the name. */
public final class SettingTable {
  private final Session session;

  /** Works in this reading or transaction. */
  public SettingTable(Session session) {
    this.session = session;
  }

  /** One choice; empty when the user made none. */
  public Optional<String> find(String name) {
    return session.first(
        "SELECT value FROM setting WHERE name = ?", row -> row.text("value"), name);
  }

  /** All choices. */
  public Map<String, String> all() {
    Map<String, String> all = new LinkedHashMap<>();
    session
        .list(
            "SELECT name, value FROM setting ORDER BY name",
            row -> Map.entry(row.text("name"), row.text("value")))
        .forEach(entry -> all.put(entry.getKey(), entry.getValue()));
    return all;
  }

  /** Keeps a choice; an empty one is forgotten. */
  public void put(String name, Optional<String> value) {
    if (value.isEmpty()) {
      session.change("DELETE FROM setting WHERE name = ?", name);
    } else {
      session.change(
          "INSERT INTO setting VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = ?",
          name,
          value,
          value);
    }
  }
}
