package org.wetside.acceptance.structure;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who may know whom, and what is nobody's business. */
class StructureTest {
  private static final int LONGEST_FILE = 500;

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.wetside");

  @Test
  void coreKnowsNobody() {
    noClasses()
        .that()
        .resideInAPackage("org.wetside.core..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.wetside.reference..",
            "org.wetside.store..",
            "org.wetside.app..",
            "org.wetside.web..",
            "org.wetside.cli..",
            "java.io..",
            "java.nio.file..",
            "java.net..",
            "java.sql..",
            "java.util.logging..",
            "org.slf4j..",
            "tools.jackson..")
        .because("the trade is computed from arguments alone, so that every number can be repeated")
        .check(PROGRAM);
  }

  @Test
  void coreStartsNoThread() {
    noClasses()
        .that()
        .resideInAPackage("org.wetside.core..")
        .should()
        .dependOnClassesThat()
        .haveNameMatching("java.lang.Thread|java.util.concurrent.*(Executor|Future|Timer).*")
        .because("a computation that waits or runs beside others cannot be repeated")
        .check(PROGRAM);
  }

  @Test
  void coreReadsNoClock() {
    noClasses()
        .that()
        .resideInAPackage("org.wetside.core..")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.time.Clock")
        .orShould()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .because("an hour of a run is tested in a millisecond only if time is handed in")
        .check(PROGRAM);
  }

  @Test
  void theWallClockEntersAtTheEdge() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.wetside.cli..")
        .and()
        .resideOutsideOfPackage("org.wetside.benchmark..")
        .should()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(java.time.Clock.class, "systemUTC")
        .orShould()
        .callMethod(java.time.Clock.class, "systemDefaultZone")
        .because("one clock is handed inwards, or a test could not hold it in hand")
        .check(PROGRAM);
  }

  @Test
  void pagesAndCommandsDoNotReachTheStore() {
    noClasses()
        .that()
        .resideInAnyPackage("org.wetside.web..", "org.wetside.cli..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.wetside.store..")
        .because("whoever shows things asks a use case, so that both ways in obey the same rules")
        .check(PROGRAM);
  }

  @Test
  void dependenciesPointInwards() {
    noClasses()
        .that()
        .resideInAPackage("org.wetside.store..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.wetside.reference..", "org.wetside.app..", "org.wetside.web..")
        .because("the store keeps what it is given and knows nothing of who asks")
        .check(PROGRAM);
    noClasses()
        .that()
        .resideInAPackage("org.wetside.reference..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.wetside.store..", "org.wetside.app..", "org.wetside.web..")
        .because("files of the trade do not depend on a home")
        .check(PROGRAM);
    noClasses()
        .that()
        .resideInAPackage("org.wetside.app..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.wetside.web..", "org.wetside.cli..", "io.javalin..")
        .because("a use case does not know who asked")
        .check(PROGRAM);
    noClasses()
        .that()
        .resideInAPackage("org.wetside.web..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.wetside.cli..")
        .because("pages do without a terminal")
        .check(PROGRAM);
  }

  @Test
  void packagesOfCoreHaveNoCycles() {
    slices()
        .matching("org.wetside.core.(*)..")
        .should()
        .beFreeOfCycles()
        .because("each concept can be read with only those before it")
        .check(PROGRAM);
  }

  @Test
  void onlyTheStoreSpeaksSqlAndOnlyMigrationMigrates() {
    noClasses()
        .that()
        .resideOutsideOfPackages("org.wetside.store..", "org.wetside.benchmark..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("java.sql..")
        .because("the database can be exchanged behind the gateways")
        .check(PROGRAM);
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("org.wetside.store.Migration")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.flywaydb..")
        .because("a command on an up-to-date database must not load the migrations")
        .check(PROGRAM);
  }

  @Test
  void namesSayWhatAThingIs() {
    noClasses()
        .should()
        .resideInAnyPackage(
            "..util..",
            "..utils..",
            "..helper..",
            "..common..",
            "..dto..",
            "..impl..",
            "..manager..",
            "..service..",
            "..services..")
        .because("a drawer for everything is where concepts get lost")
        .check(PROGRAM);
    classes()
        .that()
        .resideOutsideOfPackage("org.wetside.web.templates..")
        .should()
        .haveSimpleNameNotEndingWith("Impl")
        .andShould()
        .haveSimpleNameNotEndingWith("Manager")
        .andShould()
        .haveSimpleNameNotEndingWith("Helper")
        .andShould()
        .haveSimpleNameNotEndingWith("Utils")
        .andShould()
        .haveSimpleNameNotEndingWith("Service")
        .because("such a name says how it was built, not what it means")
        .check(PROGRAM);
  }

  @Test
  void onlyTheCommandLineWritesToTheTerminal() {
    noClasses()
        .that()
        .resideOutsideOfPackages("org.wetside.cli..", "org.wetside.benchmark..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .because("what a use case has to say is its answer")
        .check(PROGRAM);
  }

  /** Every package says what it is for; no file grows beyond what fits in a head. */
  @Test
  void everyPackageIntroducesItselfAndNoFileIsTooLong() throws IOException {
    Path root = Path.of("..").toAbsolutePath().normalize();
    for (String module : List.of("core", "reference", "store", "app", "web", "cli")) {
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
}
