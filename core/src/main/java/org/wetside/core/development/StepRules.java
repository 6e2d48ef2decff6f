package org.wetside.core.development;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** All step rules, complete. */
public final class StepRules {
  private final Map<StepRule.Name, StepRule> byName = new EnumMap<>(StepRule.Name.class);

  private StepRules(List<StepRule> rules) {
    for (StepRule rule : rules) {
      byName.put(rule.name(), rule);
    }
    for (StepRule.Name name : StepRule.Name.values()) {
      if (!byName.containsKey(name)) {
        throw new IllegalArgumentException("no rule for " + name);
      }
    }
  }

  /**
   * From one rule of every name.
   *
   * @throws IllegalArgumentException when one is missing
   */
  public static StepRules of(List<StepRule> rules) {
    return new StepRules(rules);
  }

  /** The rule of that name. */
  public StepRule get(StepRule.Name name) {
    StepRule rule = byName.get(name);
    if (rule == null) {
      throw new IllegalStateException("no rule for " + name);
    }
    return rule;
  }

  /** Its value alone. */
  double value(StepRule.Name name) {
    return get(name).value();
  }
}
