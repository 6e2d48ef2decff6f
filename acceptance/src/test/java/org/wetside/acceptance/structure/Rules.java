package org.wetside.acceptance.structure;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Who may know whom, and what is nobody's business: every rule with its reason. */
final class Rules {
  /** The packages of core, each after those it may know. */
  private static final List<List<String>> CORE =
      List.of(
          List.of("quantity"),
          List.of("source"),
          List.of("sensitometry"),
          List.of("chemistry", "safety", "development", "thermal", "instrument"),
          List.of("strip", "testroll"),
          List.of("bath", "learning"),
          List.of("shelf", "waste", "process"),
          List.of("trial", "wash", "run"),
          List.of("hands"),
          List.of("plan"));

  private Rules() {}

  static Map<String, ArchRule> all() {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    rules.put(
        "core knows nobody",
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
            .because(
                "the trade is computed from arguments alone, so that every number can be"
                    + " repeated"));
    rules.put(
        "core starts no thread",
        noClasses()
            .that()
            .resideInAPackage("org.wetside.core..")
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java.lang.Thread|java.util.concurrent.*(Executor|Future|Timer).*")
            .because("a computation that waits or runs beside others cannot be repeated"));
    rules.put(
        "core reads no clock",
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
            .because("an hour of a run is tested in a millisecond only if time is handed in"));
    rules.put(
        "the wall clock enters at the edge",
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
            .because("one clock is handed inwards, or a test could not hold it in hand"));
    rules.put(
        "pages and commands do not reach the store",
        noClasses()
            .that()
            .resideInAnyPackage("org.wetside.web..", "org.wetside.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.wetside.store..")
            .because(
                "whoever shows things asks a use case, so that both ways in obey the same rules"));
    rules.put(
        "the store knows nobody who asks",
        noClasses()
            .that()
            .resideInAPackage("org.wetside.store..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.wetside.reference..", "org.wetside.app..", "org.wetside.web..")
            .because("the store keeps what it is given and knows nothing of who asks"));
    rules.put(
        "reference knows no home",
        noClasses()
            .that()
            .resideInAPackage("org.wetside.reference..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.wetside.store..", "org.wetside.app..", "org.wetside.web..")
            .because("files of the trade do not depend on a home"));
    rules.put(
        "a use case does not know who asked",
        noClasses()
            .that()
            .resideInAPackage("org.wetside.app..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.wetside.web..", "org.wetside.cli..", "io.javalin..")
            .because("a use case does not know who asked"));
    rules.put(
        "pages do without a terminal",
        noClasses()
            .that()
            .resideInAPackage("org.wetside.web..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.wetside.cli..")
            .because("pages do without a terminal"));
    rules.put(
        "packages of core have no cycles",
        slices()
            .matching("org.wetside.core.(*)..")
            .should()
            .beFreeOfCycles()
            .because("each concept can be read with only those before it"));
    rules.put(
        "only the store speaks SQL",
        noClasses()
            .that()
            .resideOutsideOfPackages("org.wetside.store..", "org.wetside.benchmark..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.sql..")
            .because("the database can be exchanged behind the gateways"));
    rules.put(
        "only Migration migrates",
        noClasses()
            .that()
            .doNotHaveFullyQualifiedName("org.wetside.store.Migration")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.flywaydb..")
            .because("a command on an up-to-date database must not load the migrations"));
    rules.put(
        "packages are named for what they hold",
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
            .because("a drawer for everything is where concepts get lost"));
    rules.put(
        "classes are named for what they mean",
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
            .because("such a name says how it was built, not what it means"));
    rules.put(
        "only the command line writes to the terminal",
        noClasses()
            .that()
            .resideOutsideOfPackages("org.wetside.cli..", "org.wetside.benchmark..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .because("what a use case has to say is its answer"));
    for (int level = 0; level < CORE.size() - 1; level++) {
      for (String concept : CORE.get(level)) {
        rules.put("core." + concept + " knows none that comes after it", order(concept, level));
      }
    }
    rules.put("an interface has two implementations", interfaces());
    return rules;
  }

  private static ArchRule order(String concept, int level) {
    String[] later =
        CORE.subList(level + 1, CORE.size()).stream()
            .flatMap(List::stream)
            .map(name -> "org.wetside.core." + name + "..")
            .toArray(String[]::new);
    return noClasses()
        .that()
        .resideInAPackage("org.wetside.core." + concept + "..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(later)
        .because("a concept is read with only those before it");
  }

  private static ArchRule interfaces() {
    return classes()
        .that()
        .areInterfaces()
        .and()
        .areNotAnnotations()
        .and()
        .doNotHaveSimpleName("package-info")
        .should(
            new ArchCondition<JavaClass>("have two implementations") {
              @Override
              public void check(JavaClass type, ConditionEvents events) {
                long implementations =
                    type.getAllSubclasses().stream()
                        .filter(one -> !one.getModifiers().contains(JavaModifier.ABSTRACT))
                        .filter(one -> !one.isInterface())
                        .count();
                if (implementations < 2) {
                  events.add(
                      SimpleConditionEvent.violated(
                          type, type.getName() + " has " + implementations + " implementations"));
                }
              }
            })
        .because("an interface in front of one class is a detour");
  }
}
