package org.wetside.core.chemistry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;

/**
 * The substances there are, found by any of their names.
 *
 * @param all in the order of the file
 */
public record Substances(List<Substance> all) {
  private static final int MOST_NAMED = 6;

  /** Keeps an unmodifiable copy. */
  public Substances {
    all = List.copyOf(all);
  }

  /** The one that goes by exactly that name or chemical formula. */
  public Optional<Substance> find(String name) {
    String wanted = plain(name);
    for (Substance one : all) {
      if (plain(one.name()).equals(wanted)
          || one.formula().equals(name.strip())
          || one.words().stream().anyMatch(word -> plain(word).equals(wanted))) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  /** The one that the words of a recipe mean: the longest of all names that stand in them. */
  public Optional<Substance> meant(String ingredient) {
    Optional<Substance> exact = find(ingredient).or(() -> inRecipe(plain(ingredient)));
    if (exact.isPresent()) {
      return exact;
    }
    String said = " " + plain(ingredient) + " ";
    Substance best = null;
    int longest = 0;
    for (Substance one : all) {
      List<String> names = new ArrayList<>(one.words());
      names.add(one.name());
      names.addAll(one.inRecipes());
      for (String name : names) {
        String plain = plain(name);
        if (plain.length() > longest && said.contains(" " + plain + " ")) {
          best = one;
          longest = plain.length();
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private Optional<Substance> inRecipe(String wanted) {
    return all.stream()
        .filter(one -> one.inRecipes().stream().anyMatch(name -> plain(name).equals(wanted)))
        .findFirst();
  }

  /**
   * The one of that name, for somebody who must say exactly which.
   *
   * @throws BadValueException with the forms there are when the name fits several or none
   */
  public Substance require(String name) {
    return find(name)
        .orElseThrow(() -> new BadValueException("substance", name.strip(), nearest(name)));
  }

  /** The forms of the salt that was named; else whatever shares half of the words. */
  private String nearest(String name) {
    List<String> forms =
        all.stream()
            .filter(one -> plain(one.salt()).equals(plain(name)))
            .map(Substance::name)
            .toList();
    List<String> words = List.of(plain(name).split(" ", -1));
    List<String> near = new ArrayList<>(forms);
    for (Substance one : all) {
      String names = " " + plain(one.name() + " " + String.join(" ", one.words())) + " ";
      long hits = words.stream().filter(word -> names.contains(" " + word + " ")).count();
      if (forms.isEmpty() && hits * 2 >= words.size()) {
        near.add(one.name());
      }
    }
    if (near.isEmpty()) {
      return "no such substance is on file; one is " + all.get(0).name();
    }
    return "say which: " + String.join("; ", near.subList(0, Math.min(MOST_NAMED, near.size())));
  }

  /** Lower case, American spelling of sulfur, single blanks in place of punctuation. */
  static String plain(String name) {
    StringBuilder plain = new StringBuilder();
    String text = name.toLowerCase(Locale.ROOT).replace("sulph", "sulf");
    for (int i = 0; i < text.length(); i++) {
      char one = text.charAt(i);
      boolean kept = Character.isLetterOrDigit(one) || one == '%';
      if (kept) {
        plain.append(one);
      } else if (!plain.isEmpty() && plain.charAt(plain.length() - 1) != ' ') {
        plain.append(' ');
      }
    }
    return plain.toString().strip();
  }
}
