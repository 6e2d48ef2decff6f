package org.wetside.acceptance.structure;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule holds for the program, and every rule finds what breaks it. */
class StructureTest {
  private static final int LONGEST_FILE = 500;
  private static final List<String> MODULES =
      List.of("core", "reference", "store", "app", "web", "cli");

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.wetside");

  /** The program, and beside it small classes that break each rule once; their names say so. */
  private static final JavaClasses BROKEN = new ClassFileImporter().importPackages("org.wetside");

  static Set<String> rules() {
    return Rules.all().keySet();
  }

  private static ArchRule rule(String name) {
    return Objects.requireNonNull(Rules.all().get(name));
  }

  @ParameterizedTest
  @MethodSource("rules")
  void holds(String name) {
    rule(name).check(PROGRAM);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void findsWhatBreaksIt(String name) {
    EvaluationResult result = rule(name).evaluate(BROKEN);

    assertThat(result.getFailureReport().getDetails())
        .as(name)
        .anyMatch(detail -> detail.contains("Broken"));
  }

  @ParameterizedTest
  @MethodSource("rules")
  void saysWhy(String name) {
    assertThat(rule(name).getDescription()).contains(", because ");
  }

  /** Every package says what it is for; no file grows beyond what fits in a head. */
  @Test
  void everyPackageIntroducesItselfAndNoFileIsTooLong() throws IOException {
    Path root = Path.of("..").toAbsolutePath().normalize();
    for (String module : MODULES) {
      try (Stream<Path> files = Files.walk(root.resolve(module).resolve("src/main/java"))) {
        for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
          assertThat(Files.readAllLines(file)).as(file + " lines").hasSizeLessThan(LONGEST_FILE);
          Path introduction = file.resolveSibling("package-info.java");
          if (!file.endsWith("module-info.java")) {
            assertThat(Files.readString(introduction))
                .as(introduction + " says what it is for")
                .contains("@NullMarked", "/**");
          }
        }
      }
    }
  }

  /** What others may use says what it means; what overrides says it where it was promised. */
  @Test
  void everythingPublicIsDocumented() throws IOException {
    int seen = 0;
    for (String module : MODULES) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
        for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
          List<String> undocumented = PublicMembers.undocumented(Files.readString(file));
          assertThat(undocumented).as(file.toString()).isEmpty();
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(100);
  }

  @Test
  void whatIsNotDocumentedIsFound() {
    String broken =
        """
        /** A thing. */
        public final class Thing {
          public void does() {}

          /** Says so. */
          public int says() { return 1; }

          @Override
          public String toString() { return ""; }
        }
        """;
    assertThat(PublicMembers.undocumented(broken)).containsExactly("public void does() {}");
    assertThat(PublicMembers.undocumented("public enum Bare {}"))
        .containsExactly("public enum Bare {}");
  }
}
