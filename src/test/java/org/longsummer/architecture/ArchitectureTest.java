package org.longsummer.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.PackageMatcher;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.guilty.GuiltyManager;
import org.longsummer.evidence.Project;
import org.longsummer.quantity.guilty.UpwardArrow;

/** The product keeps the rules of the house, and each rule is seen to fail on a class that is guilty on purpose. */
class ArchitectureTest {
    private static final JavaClasses PRODUCT = new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.longsummer");
    private static final JavaClasses GUILTY = new ClassFileImporter().importClasses(GuiltyManager.class);
    private static final JavaClasses UPWARD = new ClassFileImporter().importClasses(UpwardArrow.class);
    private static final Pattern COMPONENT = Pattern.compile("<<([\\w.]+)>>");
    private static final Pattern NAMED = Pattern.compile("\\[(\\w+)] <<([\\w.]+)>>");
    private static final Pattern ARROW = Pattern.compile("\\[(\\w+)] --> \\[(\\w+)]");

    @Test
    void theDrawingIsTrue() {
        Rules.drawing().check(PRODUCT);
        guilty(Rules.drawing(), UPWARD, "UpwardArrow.againstTheArrow");
    }

    @Test
    void everyPackageIsInTheDrawingOnce() {
        Set<String> packages = new TreeSet<>();
        PRODUCT.forEach(type -> packages.add(type.getPackageName()));
        List<String> strays = packages.stream().filter(name -> components(name) != 1).toList();
        assertTrue(strays.isEmpty(), () -> "not in reference/architecture.puml exactly once: " + strays);
        assertEquals(0, components(GuiltyManager.class.getPackageName()));
        assertTrue(packages.contains("org.longsummer.quantity"), "no package was looked at");
    }

    /** An arrow that nothing needs any more is a permission nobody gave. */
    @Test
    void everyArrowIsUsed() {
        Map<String, String> packages = new TreeMap<>();
        NAMED.matcher(Project.read(Rules.DRAWING)).results().forEach(named -> packages.put(named.group(1), named.group(2)));
        List<String> unused = ARROW.matcher(Project.read(Rules.DRAWING)).results()
                .filter(arrow -> !isUsed(PackageMatcher.of(packages.get(arrow.group(1))), PackageMatcher.of(packages.get(arrow.group(2)))))
                .map(MatchResult::group).toList();
        assertTrue(unused.isEmpty(), () -> "drawn and not needed: " + unused);
        assertFalse(isUsed(PackageMatcher.of("org.longsummer.quantity.."), PackageMatcher.of("org.longsummer.science..")));
    }

    private static boolean isUsed(PackageMatcher from, PackageMatcher to) {
        return PRODUCT.stream().filter(type -> from.matches(type.getPackageName())).flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                .anyMatch(dependency -> to.matches(dependency.getTargetClass().getPackageName()));
    }

    private static long components(String packageName) {
        Matcher drawn = COMPONENT.matcher(Project.read(Rules.DRAWING));
        return drawn.results().filter(component -> PackageMatcher.of(component.group(1)).matches(packageName)).count();
    }

    @Test
    void theCoreAnswersTheSameEverywhere() {
        Rules.callsThatAPhoneAnswersDifferently().check(PRODUCT);
        for (String call : List.of("String.format", "String.formatted", "String.lines", "Math.round", "Math.rint", "Math.fma", "Math.log1p",
                "Math.expm1", "Math.tanh", "Math.random", "DoubleStream.sum", "DoubleStream.average", "Collectors.summingDouble",
                "Collectors.averagingDouble", "Collectors.toSet", "Collectors.groupingBy", "HashMap.<init>", "HashSet.<init>", "Instant.now",
                "LocalDate.now", "System.currentTimeMillis", "System.nanoTime")) {
            guilty(Rules.callsThatAPhoneAnswersDifferently(), GUILTY, call + "(");
        }
    }

    @Test
    void theCoreWritesLettersInNoLanguage() {
        Rules.lettersWithoutALanguage().check(PRODUCT);
        guilty(Rules.lettersWithoutALanguage(), GUILTY, "toLowerCase()");
        guilty(Rules.lettersWithoutALanguage(), GUILTY, "toUpperCase()");
    }

    @Test
    void theCoreKnowsNoShell() {
        Rules.whatTheCoreDoesNotKnow().check(PRODUCT);
        for (String known : List.of("java.sql.Connection", "io.javalin.http.Context", "com.fasterxml.jackson.databind.ObjectMapper",
                "java.nio.file.Path", "java.net.URI", "java.io.PrintStream", "java.util.Random")) {
            guilty(Rules.whatTheCoreDoesNotKnow(), GUILTY, known);
        }
    }

    @Test
    void sqlIsInTheStoreOnly() {
        Rules.sqlOnlyInTheStore().check(PRODUCT);
        guilty(Rules.sqlOnlyInTheStore(), GUILTY, "java.sql.Connection");
    }

    @Test
    void httpAndJsonAreInTheWebOnly() {
        Rules.httpAndJsonOnlyInTheWeb().check(PRODUCT);
        guilty(Rules.httpAndJsonOnlyInTheWeb(), GUILTY, "io.javalin.http.Context");
        guilty(Rules.httpAndJsonOnlyInTheWeb(), GUILTY, "ObjectMapper");
    }

    @Test
    void classesAreNamedByWhatTheyAre() {
        Rules.namesThatSayNothing().check(PRODUCT);
        guilty(Rules.namesThatSayNothing(), GUILTY, "GuiltyManager");
    }

    @Test
    void everyPackageSaysWhatItIsFor() {
        List<String> silent = new ArrayList<>();
        for (Path root : List.of(Project.MAIN_SOURCES, Project.TEST_SOURCES)) {
            for (Path source : Project.files(root, name -> name.endsWith(".java") && !name.equals("package-info.java"))) {
                Path page = source.resolveSibling("package-info.java");
                Path twin = Project.MAIN_SOURCES.resolve(root.relativize(page));
                if (!Files.exists(page) && !Files.exists(twin)) {
                    silent.add(page.toString());
                }
            }
        }
        assertTrue(silent.isEmpty(), () -> "missing: " + new TreeSet<>(silent));
    }

    private static void guilty(ArchRule rule, JavaClasses classes, String words) {
        EvaluationResult result = rule.evaluate(classes);
        assertTrue(result.hasViolation(), () -> "the rule cannot fail: " + rule.getDescription());
        assertTrue(result.getFailureReport().toString().contains(words), () -> words + " was not seen in " + result.getFailureReport());
    }
}
