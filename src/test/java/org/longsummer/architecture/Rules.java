package org.longsummer.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInAnyPackage;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The rules of the house that can be checked by looking at the classes. */
final class Rules {
    static final Path DRAWING = Path.of("reference", "architecture.puml");
    private static final String[] CORE = {"org.longsummer.quantity..", "org.longsummer.science..", "org.longsummer.chain..",
        "org.longsummer.wire..", "org.longsummer.phone.."};

    /** Calls that a phone would answer differently from a server, or from one moment to the next, by owner and name. */
    private static final Map<String, Set<String>> REFUSED_CALLS = new TreeMap<>(Map.ofEntries(
            Map.entry("java.lang.String", Set.of("format", "formatted", "lines")),
            Map.entry("java.lang.Math", Set.of("round", "rint", "fma", "log1p", "expm1", "tanh", "sinh", "cosh", "random")),
            Map.entry("java.lang.StrictMath", Set.of("round", "rint", "fma", "log1p", "expm1", "tanh", "sinh", "cosh", "random")),
            Map.entry("java.util.stream.DoubleStream", Set.of("sum", "average", "summaryStatistics")),
            Map.entry("java.util.stream.Collectors", Set.of("summingDouble", "averagingDouble", "summarizingDouble", "toSet", "groupingBy",
                    "partitioningBy", "toMap")),
            Map.entry("java.util.HashMap", Set.of("<init>")),
            Map.entry("java.util.HashSet", Set.of("<init>")),
            Map.entry("java.util.IdentityHashMap", Set.of("<init>")),
            Map.entry("java.lang.System", Set.of("currentTimeMillis", "nanoTime", "identityHashCode", "getenv", "getProperty")),
            Map.entry("java.time.Instant", Set.of("now")),
            Map.entry("java.time.LocalDate", Set.of("now")),
            Map.entry("java.time.LocalDateTime", Set.of("now")),
            Map.entry("java.time.LocalTime", Set.of("now")),
            Map.entry("java.time.OffsetDateTime", Set.of("now")),
            Map.entry("java.time.ZonedDateTime", Set.of("now")),
            Map.entry("java.time.Year", Set.of("now")),
            Map.entry("java.time.YearMonth", Set.of("now")),
            Map.entry("java.time.ZoneId", Set.of("systemDefault"))));

    private Rules() {}

    static ArchRule drawing() {
        return classes().should(adhereToPlantUmlDiagram(DRAWING, consideringOnlyDependenciesInAnyPackage("org.longsummer..")))
                .because("reference/architecture.puml shows every arrow there is");
    }

    static ArchRule callsThatAPhoneAnswersDifferently() {
        return noClasses().that(resideInAnyPackage(CORE)).should().callMethodWhere(isRefused()).orShould().callConstructorWhere(isRefused())
                .because("the core gives the same answer on a server, on a phone and tomorrow: sums in a loop, TreeMap or LinkedHashMap,"
                        + " Decimal for words, dates and moments as arguments");
    }

    static ArchRule lettersWithoutALanguage() {
        return noClasses().that(resideInAnyPackage(CORE)).should().callMethod(String.class, "toLowerCase").orShould()
                .callMethod(String.class, "toUpperCase").because("letters change by the machine's language; give Locale.ROOT");
    }

    static ArchRule whatTheCoreDoesNotKnow() {
        return noClasses().that(resideInAnyPackage(CORE)).should().dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio..", "java.net..",
                "java.sql..", "javax..", "jakarta..", "java.util.concurrent..", "java.util.logging..", "org.slf4j..", "com.fasterxml..",
                "io.javalin..", "org.jdbi..", "org.sqlite..", "org.flywaydb..", "picocli..", "de.siegmar..")
                .or(isNamed("java.util.Random", "java.util.SplittableRandom", "java.security.SecureRandom", "java.time.Clock",
                        "java.util.HexFormat", "java.util.UUID")))
                .because("the core is handed what it needs and hands back what it found");
    }

    static ArchRule sqlOnlyInTheStore() {
        return noClasses().that(DescribedPredicate.not(resideInAPackage("org.longsummer.store.."))).should().dependOnClassesThat(
                resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "org.sqlite..", "org.flywaydb.."))
                .because("one place knows SQL");
    }

    static ArchRule httpAndJsonOnlyInTheWeb() {
        return noClasses().that(DescribedPredicate.not(resideInAPackage("org.longsummer.web.."))).should().dependOnClassesThat(
                resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..", "java.net.http..", "com.fasterxml.."))
                .because("one place knows HTTP and JSON");
    }

    static ArchRule namesThatSayNothing() {
        return classes().should().haveNameNotMatching(".*[a-z](Manager|Helper|Helpers|Util|Utils|Service|Impl|Data|Info|Common|Base|Abstract)")
                .because("a class is named by what it is");
    }

    private static DescribedPredicate<JavaCall<?>> isRefused() {
        return DescribedPredicate.describe("differs between machines or moments",
                call -> REFUSED_CALLS.getOrDefault(call.getTargetOwner().getName(), Set.of()).contains(call.getName()));
    }

    private static DescribedPredicate<com.tngtech.archunit.core.domain.JavaClass> isNamed(String... names) {
        return DescribedPredicate.describe("are one of " + String.join(", ", names), type -> Set.of(names).contains(type.getName()));
    }
}
