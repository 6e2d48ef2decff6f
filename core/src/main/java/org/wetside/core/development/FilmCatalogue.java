package org.wetside.core.development;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All films by the names people type. A code decides at once; else a name that is exactly what was
 * typed wins over one that has it as whole words, and that over one that only contains it.
 */
public final class FilmCatalogue {
  private static final int NEAREST = 4;

  private final Map<String, Film> byCode = new LinkedHashMap<>();

  private FilmCatalogue(List<Film> films) {
    for (Film film : films) {
      byCode.putIfAbsent(film.code().toLowerCase(Locale.ROOT), film);
    }
  }

  /** Of these films; of films with one code the first counts. */
  public static FilmCatalogue of(List<Film> films) {
    return new FilmCatalogue(films);
  }

  /** With further films, such as those the user named. */
  public FilmCatalogue with(List<Film> more) {
    List<Film> both = new ArrayList<>(films());
    both.addAll(more);
    return new FilmCatalogue(both);
  }

  /** All films in order. */
  public List<Film> films() {
    return List.copyOf(byCode.values());
  }

  /** The film of exactly this code. */
  public Optional<Film> byCode(String code) {
    return Optional.ofNullable(byCode.get(code.strip().toLowerCase(Locale.ROOT)));
  }

  /** What a typed name leads to. */
  public FilmMatch find(String typed) {
    Optional<Film> coded = byCode(typed).or(() -> codeInBrackets(typed));
    if (coded.isPresent()) {
      return new FilmMatch.Found(List.of(coded.get()));
    }
    NameKey key = NameKey.of(typed);
    return Stream.of(exactly(key), withWords(key), containing(key))
        .filter(films -> !films.isEmpty())
        .findFirst()
        .map(this::match)
        .orElseGet(() -> new FilmMatch.NotFound(nearest(key)));
  }

  private Optional<Film> codeInBrackets(String typed) {
    int open = typed.lastIndexOf('(');
    return open > 0 && typed.strip().endsWith(")")
        ? byCode(typed.substring(open + 1, typed.lastIndexOf(')')))
        : Optional.empty();
  }

  private List<Film> exactly(NameKey key) {
    return films().stream()
        .filter(film -> names(film).anyMatch(name -> name.joined().equals(key.joined())))
        .toList();
  }

  private List<Film> withWords(NameKey key) {
    return films().stream()
        .filter(film -> names(film).anyMatch(name -> name.hasWords(key)))
        .toList();
  }

  private List<Film> containing(NameKey key) {
    return key.joined().length() < 2
        ? List.of()
        : films().stream()
            .filter(film -> names(film).anyMatch(name -> name.joined().contains(key.joined())))
            .toList();
  }

  private static Stream<NameKey> names(Film film) {
    return Stream.concat(Stream.of(film.name()), film.aliases().stream())
        .flatMap(name -> Stream.of(name, film.maker() + " " + name))
        .map(NameKey::of);
  }

  private FilmMatch match(List<Film> hits) {
    Map<String, List<Film>> families = new LinkedHashMap<>();
    for (Film hit : hits) {
      Film newest = newestOf(hit);
      families.putIfAbsent(newest.code(), coatingsOf(newest));
    }
    return families.size() == 1
        ? new FilmMatch.Found(families.values().iterator().next())
        : new FilmMatch.Ambiguous(
            families.values().stream().map(coatings -> coatings.get(0)).toList());
  }

  private Film newestOf(Film film) {
    Film newest = film;
    while (newest.succeededBy().isPresent()) {
      Optional<Film> next = byCode(newest.succeededBy().get());
      if (next.isEmpty()) {
        return newest;
      }
      newest = next.get();
    }
    return newest;
  }

  /** All coatings that lead to this one, it first, each before what it replaced. */
  public List<Film> coatingsOf(Film newest) {
    List<Film> coatings = new ArrayList<>();
    coatings.add(newest);
    for (int i = 0; i < coatings.size(); i++) {
      String code = coatings.get(i).code();
      films().stream()
          .filter(film -> film.succeededBy().filter(code::equals).isPresent())
          .forEach(coatings::add);
    }
    return coatings;
  }

  private List<Film> nearest(NameKey key) {
    return films().stream()
        .filter(film -> !film.isFormerCoating())
        .sorted(
            Comparator.comparingInt(
                film -> names(film).mapToInt(key::distanceTo).min().orElse(Integer.MAX_VALUE)))
        .limit(NEAREST)
        .toList();
  }
}
