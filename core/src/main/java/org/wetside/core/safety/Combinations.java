package org.wetside.core.safety;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.wetside.core.safety.CombinationRule.Meeting;

/** Judges combinations by the rules on file: in a vessel, in an order of mixing, on the film. */
public final class Combinations {
  private final List<CombinationRule> rules;

  /** By those rules. */
  public Combinations(List<CombinationRule> rules) {
    this.rules = List.copyOf(rules);
  }

  /**
   * What speaks against pouring a thing into a vessel with other things in it.
   *
   * @param poured what is poured or dissolved
   * @param inside what is in the vessel, in the order in which it got there; empty for none
   * @return empty when nothing on file speaks against it
   */
  public List<Objection> pouring(Material poured, List<Material> inside) {
    return pouring(poured, inside, 0);
  }

  /**
   * What speaks against putting things into one vessel one after another.
   *
   * @param order the first thing first
   * @return objections, each with the position of the thing that should not come then
   */
  public List<Objection> inOrder(List<Material> order) {
    List<Objection> all = new ArrayList<>();
    for (int i = 1; i < order.size(); i++) {
      all.addAll(pouring(order.get(i), order.subList(0, i), i));
    }
    return all;
  }

  /**
   * What speaks against baths that meet on the film.
   *
   * @param baths every liquid in order, plain water too
   * @return objections, each with the position of the second bath
   */
  public List<Objection> inTurn(List<Material> baths) {
    List<Objection> all = new ArrayList<>();
    for (int i = 1; i < baths.size(); i++) {
      Material before = baths.get(i - 1);
      Material after = baths.get(i);
      for (CombinationRule rule : rules) {
        if (rule.meeting() == Meeting.IN_TURN
            && before.is(rule.first())
            && after.is(rule.second())
            && !lifted(rule, after.natures())) {
          all.add(new Objection(before.name(), after.name(), i, rule));
        }
      }
    }
    return all;
  }

  /** What speaks against using a part of it: the powders of a package are not homogeneous. */
  public List<Objection> partOf(Material whole) {
    return rules.stream()
        .filter(rule -> rule.meeting() == Meeting.ALONE && whole.is(rule.first()))
        .map(rule -> new Objection("part of " + whole.name(), "", 0, rule))
        .toList();
  }

  private List<Objection> pouring(Material poured, List<Material> inside, int position) {
    List<Objection> all = new ArrayList<>();
    for (CombinationRule rule : rules) {
      for (Material there : inside) {
        boolean met =
            meets(rule, poured, there, inside, rule.first(), rule.second())
                || (rule.meeting() == Meeting.TOGETHER
                    && meets(rule, poured, there, inside, rule.second(), rule.first()));
        if (met) {
          all.add(new Objection(poured.name(), there.name(), position, rule));
          break;
        }
      }
    }
    return all;
  }

  private static boolean meets(
      CombinationRule rule,
      Material poured,
      Material there,
      List<Material> inside,
      Set<Nature> ofPoured,
      Set<Nature> ofThere) {
    boolean inVessel = rule.meeting() == Meeting.TOGETHER || rule.meeting() == Meeting.INTO;
    return inVessel
        && poured.is(ofPoured)
        && there.is(ofThere)
        && !lifted(rule, besides(poured, ofPoured, inside));
  }

  /** Everything there is apart from what is being poured for its own sake. */
  private static Set<Nature> besides(Material poured, Set<Nature> matched, List<Material> inside) {
    Set<Nature> all = EnumSet.noneOf(Nature.class);
    all.addAll(poured.natures());
    all.removeAll(matched);
    inside.forEach(one -> all.addAll(one.natures()));
    return all;
  }

  private static boolean lifted(CombinationRule rule, Set<Nature> natures) {
    return rule.unless().stream().anyMatch(natures::contains);
  }
}
