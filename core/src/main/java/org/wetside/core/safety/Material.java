package org.wetside.core.safety;

import java.util.EnumSet;
import java.util.Set;
import org.wetside.core.quantity.BadValueException;

/**
 * A thing that is handled: a salt, a solution, a bath, what is in a jug.
 *
 * @param name as the person knows it, for example {@code acetic acid 28%} or {@code bottle F, TF-3}
 * @param known whether anything is on file about what it is; of an unknown one no combination can
 *     be judged
 * @param natures what it is; empty when nothing of it matters here
 */
public record Material(String name, boolean known, Set<Nature> natures) {
  /** Keeps an unmodifiable copy. */
  public Material {
    name = name.strip();
    if (name.isEmpty()) {
      throw new BadValueException("material", name, "it needs a name");
    }
    natures = Set.copyOf(natures);
  }

  /** A thing of which it is known what it is. */
  public static Material of(String name, Set<Nature> natures) {
    return new Material(name, true, natures);
  }

  /** A thing of which nothing is on file. */
  public static Material unknown(String name) {
    return new Material(name, false, Set.of());
  }

  /** The same under another name, such as that of the bottle it is in. */
  public Material named(String other) {
    return new Material(other, known, natures);
  }

  /** The same, and this besides. */
  public Material with(Nature nature) {
    Set<Nature> more = EnumSet.of(nature);
    more.addAll(natures);
    return new Material(name, known, more);
  }

  boolean is(Set<Nature> all) {
    return natures.containsAll(all);
  }
}
