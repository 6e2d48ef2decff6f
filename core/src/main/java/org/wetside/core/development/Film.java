package org.wetside.core.development;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One coating of one film. Coatings that share a name differ: the code decides, and they never
 * share a time.
 *
 * @param code identity, for example {@code 400TX}; for a film of the user's own naming its name
 * @param maker the maker's name, may be empty
 * @param name name without the maker, for example {@code TRI-X 400}
 * @param aliases other ways of writing the name
 * @param tabularGrain whether it counts as tabular grain in the fixer
 * @param formats what it is sold in
 * @param coating whether it is the coating sold now, a former one, or the user's
 * @param succeededBy code of the coating that replaced it
 */
public record Film(
    String code,
    String maker,
    String name,
    List<String> aliases,
    boolean tabularGrain,
    Set<FilmFormat> formats,
    Coating coating,
    Optional<String> succeededBy) {
  /** Where a coating stands in the life of its film. */
  public enum Coating {
    /** The newest of its name. */
    NEWEST,
    /** Replaced by a later one. */
    FORMER,
    /** Named by the user, unknown to the catalogue. */
    OWN
  }

  public Film {
    aliases = List.copyOf(aliases);
    formats = Set.copyOf(formats);
  }

  /** A film that only the user knows; its name is its identity. */
  public static Film ownNamed(String name) {
    String bare = name.strip();
    return new Film(
        bare, "", bare, List.of(), false, Set.of(FilmFormat.ANY), Coating.OWN, Optional.empty());
  }

  /** Whether a later coating has replaced this one. */
  public boolean isFormerCoating() {
    return coating == Coating.FORMER;
  }

  /** Name and, where they differ, code: {@code TRI-X 400 (400TX)}. */
  public String label() {
    return code.equals(name) ? name : name + " (" + code + ")";
  }
}
