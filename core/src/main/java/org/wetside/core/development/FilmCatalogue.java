package org.wetside.core.development;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * All films by the names people type. A code decides at once; else a name that is exactly what was
 * typed wins over one that has it as whole words, and that over one that only contains it.
 */
public final class FilmCatalogue {
  private static final int NEAREST = 4;

  private final Map<String, Film> byCode = new LinkedHashMap<>();
  private final Map<Film, List<NameKey>> names = new LinkedHashMap<>();

  private FilmCatalogue(List<Film> films) {
    for (Film film : films) {
      if (byCode.putIfAbsent(film.code().toLowerCase(Locale.ROOT), film) == null) {
        names.put(film, keysOf(film));
      }
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
    String joined = key.joined();
    List<Film> hits = named(name -> name.joined().equals(joined));
    if (hits.isEmpty()) {
      hits = named(name -> name.hasWords(key));
    }
    if (hits.isEmpty() && joined.length() > 1) {
      hits = named(name -> name.joined().contains(joined));
    }
    return hits.isEmpty() ? new FilmMatch.NotFound(nearest(key)) : match(hits);
  }

  private Optional<Film> codeInBrackets(String typed) {
    int open = typed.lastIndexOf('(');
    return open > 0 && typed.strip().endsWith(")")
        ? byCode(typed.substring(open + 1, typed.lastIndexOf(')')))
        : Optional.empty();
  }

  private static List<NameKey> keysOf(Film film) {
    List<NameKey> keys = new ArrayList<>();
    List<String> written = new ArrayList<>(film.aliases());
    written.add(0, film.name());
    for (String name : written) {
      keys.add(NameKey.of(name));
      if (!film.maker().isEmpty()) {
        keys.add(NameKey.of(film.maker() + " " + name));
      }
    }
    return keys;
  }

  private List<Film> named(Predicate<NameKey> matches) {
    List<Film> hits = new ArrayList<>();
    for (Map.Entry<Film, List<NameKey>> film : names.entrySet()) {
      for (NameKey name : film.getValue()) {
        if (matches.test(name)) {
          hits.add(film.getKey());
          break;
        }
      }
    }
    return hits;
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
        .sorted(Comparator.comparingInt(film -> distance(key, film)))
        .limit(NEAREST)
        .toList();
  }

  private int distance(NameKey key, Film film) {
    int least = Integer.MAX_VALUE;
    for (NameKey name : names.getOrDefault(film, List.of())) {
      least = Math.min(least, key.distanceTo(name));
    }
    return least;
  }
}
