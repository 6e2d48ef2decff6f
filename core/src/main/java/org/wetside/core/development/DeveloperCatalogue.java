package org.wetside.core.development;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.wetside.core.quantity.BadValueException;

/** All developers by the names people type: {@code D-76}, {@code d76}. */
public final class DeveloperCatalogue {
  private static final int NEAREST = 4;

  private final List<Developer> developers;

  private DeveloperCatalogue(List<Developer> developers) {
    this.developers = List.copyOf(developers);
  }

  /** Of these developers. */
  public static DeveloperCatalogue of(List<Developer> developers) {
    return new DeveloperCatalogue(developers);
  }

  /** With further developers, such as those the user named. */
  public DeveloperCatalogue with(List<Developer> more) {
    List<Developer> both = new ArrayList<>(developers);
    both.addAll(more);
    return new DeveloperCatalogue(both);
  }

  /** All developers in order. */
  public List<Developer> developers() {
    return developers;
  }

  /**
   * The developer meant; empty when none of that name is known.
   *
   * @throws BadValueException when several could be meant, with the list
   */
  public Optional<Developer> find(String typed) {
    NameKey key = NameKey.of(typed);
    if (key.joined().isEmpty()) {
      return Optional.empty();
    }
    List<Developer> hits =
        Stream.<Predicate<NameKey>>of(
                name -> name.joined().equals(key.joined()), name -> name.hasWords(key))
            .map(this::named)
            .filter(found -> !found.isEmpty())
            .findFirst()
            .orElse(List.of());
    if (hits.size() > 1) {
      throw new BadValueException(
          "developer", typed.strip(), "it may be " + list(hits) + "; write one of them");
    }
    return hits.stream().findFirst();
  }

  /**
   * The developer meant.
   *
   * @throws BadValueException when none or several could be meant, with the nearest names
   */
  public Developer require(String typed) {
    return find(typed)
        .orElseThrow(
            () ->
                new BadValueException(
                    "developer",
                    typed.strip(),
                    "none of that name is known; the nearest are " + list(nearest(typed))));
  }

  private List<Developer> named(Predicate<NameKey> matches) {
    return developers.stream()
        .filter(
            developer ->
                Stream.concat(Stream.of(developer.name()), developer.aliases().stream())
                    .map(NameKey::of)
                    .anyMatch(matches))
        .toList();
  }

  private List<Developer> nearest(String typed) {
    NameKey key = NameKey.of(typed);
    return developers.stream()
        .sorted(Comparator.comparingInt(developer -> key.distanceTo(NameKey.of(developer.name()))))
        .limit(NEAREST)
        .toList();
  }

  private static String list(List<Developer> some) {
    return String.join(", ", some.stream().map(Developer::name).toList());
  }
}
