package org.wetside.acceptance.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Names this project does without stand nowhere in it, this test included: it knows their sums. */
class NamesNotUsedTest {
  private static final Path ROOT = Path.of("..");
  private static final Pattern WORD = Pattern.compile("[a-z]+");
  private static final Pattern ONE_MACHINE =
      Pattern.compile("(?<![\\w.}/*-])/(" + "work|tmp" + ")/\\w");
  private static final Set<String> SUMS =
      Set.of(
          "e0cd68bd5576f3c12a891419259bceb16d4199e96d8657718d6fc0e0dae8c2aa",
          "ea7c003b3b0a0c4e0d48d0f1ce8a8850a0fe2f62230e467f4c20b928328aecc0",
          "62ca896aef220f584537e271b52417e0b9ec2b53f7cb0f96fc87093a73e0e2c1",
          "122b7ca96fb92bfe037aac8e38b27e5c2d5e68341d2179e514bbc36ac039e4d6");

  @Test
  void noFileHoldsOne() throws IOException {
    List<String> found = new ArrayList<>();
    int read = 0;
    for (Path file : texts()) {
      read++;
      for (String words : wordsOf(Files.readString(file))) {
        if (SUMS.contains(sum(words))) {
          found.add(file.toString());
        }
      }
    }
    assertThat(found).isEmpty();
    assertThat(read).isGreaterThan(500);
  }

  @Test
  void noFileHoldsAPathOfOneMachine() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : texts()) {
      if (ONE_MACHINE.matcher(Files.readString(file)).find()) {
        found.add(file.toString());
      }
    }
    assertThat(found).isEmpty();
  }

  /** Each word and each pair of neighbours, once. */
  private static Set<String> wordsOf(String text) {
    Set<String> words = new TreeSet<>();
    Matcher matcher = WORD.matcher(text.toLowerCase(Locale.ROOT));
    String before = "";
    while (matcher.find()) {
      words.add(matcher.group());
      if (matcher.group().length() == 1) {
        words.add(before + " " + matcher.group());
      }
      before = matcher.group();
    }
    return words;
  }

  private static List<Path> texts() throws IOException {
    try (Stream<Path> files = Files.walk(ROOT)) {
      return files
          .filter(file -> !file.toString().contains("/target/"))
          .filter(file -> !file.toString().contains("/.git/"))
          .filter(
              file ->
                  file.toString()
                      .matches(".*\\.(java|md|csv|jte|js|css|sql|xml|txt|json|properties)"))
          .toList();
    }
  }

  private static String sum(String words) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(words.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }

  @Test
  void oneWouldBeFound() {
    assertThat(wordsOf("a Sluice, Gate F of it"))
        .contains("sluice", "gate f")
        .doesNotContain("f of");
    assertThat("see /" + "tmp/notes").containsPattern(ONE_MACHINE);
    assertThat("see target/tmp/notes").doesNotContainPattern(ONE_MACHINE);
    assertThat(sum("abc"))
        .as("FIPS 180-2, appendix B.1")
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }
}
