package org.wetside.core.development;

import java.util.List;
import java.util.Map;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.DilutionRatio;

/**
 * A developer as sold or mixed.
 *
 * @param name identity and name, for example {@code D-76}
 * @param aliases other ways of writing it
 * @param letters the maker's letters for dilutions of it, and what they mean
 * @param usualAgitation the way it is used when nothing is said; monobaths differ
 */
public record Developer(
    String name,
    List<String> aliases,
    Map<String, DilutionRatio> letters,
    Agitation usualAgitation) {
  public Developer {
    aliases = List.copyOf(aliases);
    letters = Map.copyOf(letters);
  }

  /** A developer that only the user knows. */
  public static Developer ownNamed(String name) {
    return new Developer(name.strip(), List.of(), Map.of(), Agitation.ORDINARY);
  }

  /** The dilution with its parts where this maker's letter has them. */
  public Dilution resolve(Dilution dilution) {
    if (dilution instanceof Dilution.Lettered lettered && lettered.ratio().isEmpty()) {
      DilutionRatio parts = letters.get(lettered.letter());
      if (parts != null) {
        return new Dilution.Lettered(lettered.letter(), java.util.Optional.of(parts));
      }
    }
    return dilution;
  }
}
