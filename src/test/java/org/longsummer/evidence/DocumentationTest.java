package org.longsummer.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the pages for users and for developers name is there: addresses, settings, files, classes, tests, headings. */
class DocumentationTest {
    private static final Pattern ADDRESS = Pattern.compile("(?<![\\w.}/-])/(?:api|health|u)(?:/[\\w{}.-]+)+|(?<![\\w.}/-])/health\\b");
    private static final Pattern FLAG = Pattern.compile("(?<![\\w-])(--[a-z][a-z-]+)");
    private static final Pattern VARIABLE = Pattern.compile("\\bLONGSUMMER_[A-Z_]+");
    private static final Pattern PROPERTY = Pattern.compile("-D([a-z]+(?:\\.[a-z]+)+|benchmark|screenshots)\\b");
    private static final Pattern CODE = Pattern.compile("`([^`\\n]+)`");
    private static final Pattern FILE = Pattern.compile("(?:web|src|reference|demo-data)/[\\w./-]*");
    private static final Pattern CLASS = Pattern.compile("(?:[a-z]+\\.)*[A-Z]\\w*[a-z]\\w*(?:\\.[a-zA-Z]\\w*)?");
    private static final Pattern TEST = Pattern.compile("-Dtest='?([\\w,*]+)");
    private static final Pattern HEADING_LINK = Pattern.compile("\\]\\(([^)\\s#]*)#([^)]+)\\)");
    /** Commands of an operating system that the pages name, whose flags are theirs. */
    private static final Pattern OTHER_COMMAND = Pattern.compile("`(?:systemctl|journalctl|keytool|docker|git)\\b[^`]*`");
    /** Names of the web's and of the language's own. */
    private static final Set<String> NOT_OURS = Set.of("Origin", "IndexedDB", "SecureRandom", "Math.round", "String.format");
    /** Made by the build. */
    private static final String MADE = "web/phone/core.js";

    private static final String SOURCES = Project.files(Path.of("src"), name -> name.endsWith(".java")).stream()
            .filter(path -> !path.endsWith("DocumentationTest.java")).map(Project::read).collect(Collectors.joining("\n"));
    private static final List<String> CLASSES = Project.files(Path.of("src"), name -> name.endsWith(".java")).stream()
            .map(path -> path.toString().replace('\\', '/').replaceFirst("^.*org/longsummer/", "").replaceFirst("\\.java$", "").replace('/', '.')).toList();

    private static final Set<String> IDENTIFIERS = Set.copyOf(Arrays.asList(SOURCES.split("\\W+")));
    private static final Set<String> TYPES = Pattern.compile("\\b(?:class|record|enum|interface) (\\w+)").matcher(SOURCES).results()
            .map(match -> match.group(1)).collect(Collectors.toUnmodifiableSet());

    /** Pages by path. */
    private static Map<Path, String> pages() {
        Map<Path, String> pages = new TreeMap<>();
        for (Path path : List.of(Path.of("README.md"), Path.of("DEVELOPERS.md"), Path.of("demo-data", "README.md"))) {
            pages.put(path, Project.read(path));
        }
        Project.files(Project.REFERENCE, name -> name.endsWith(".md")).forEach(path -> pages.put(path, Project.read(path)));
        assertTrue(pages.size() > 15, pages.keySet()::toString);
        return pages;
    }

    private static void nothingUnknown(Function<String, Set<String>> unknown) {
        List<String> all = new ArrayList<>();
        pages().forEach((path, text) -> unknown.apply(text).forEach(name -> all.add(path + ": " + name)));
        assertEquals(List.of(), all, "named and not there");
    }

    private static Set<String> named(Pattern pattern, String text, Function<String, Boolean> isThere) {
        return pattern.matcher(text).results().map((MatchResult match) -> match.group(match.groupCount() > 0 ? 1 : 0)).filter(name -> !isThere.apply(name))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> unknownAddresses(String text) {
        List<Pattern> addresses = new ArrayList<>();
        try {
            new ObjectMapper().readTree(Project.REFERENCE.resolve("openapi.json").toFile()).path("paths").fieldNames().forEachRemaining(path ->
                    addresses.add(Pattern.compile(path.replace(".", "\\.").replaceAll("\\{\\w+}", "[^/]+"))));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        addresses.add(Pattern.compile("/u/[^/]+"));
        return named(ADDRESS, text, name -> addresses.stream().anyMatch(address -> address.matcher(name.replaceFirst("\\.$", "")).matches()));
    }

    private static Set<String> unknownSettings(String text) {
        String ours = OTHER_COMMAND.matcher(text).replaceAll("");
        Set<String> unknown = named(FLAG, ours, flag -> SOURCES.contains("\"" + flag + "\""));
        unknown.addAll(named(VARIABLE, text, variable -> SOURCES.contains(variable)
                || SOURCES.contains("\"--" + variable.substring("LONGSUMMER_".length()).toLowerCase(Locale.ROOT).replace('_', '-') + "\"")));
        String readers = SOURCES + Project.read(Path.of("pom.xml"));
        unknown.addAll(named(PROPERTY, text, readers::contains));
        return unknown;
    }

    private static Set<String> unknownFiles(String text) {
        return named(CODE, text, name -> !FILE.matcher(name).matches() || name.equals(MADE) || Files.exists(Path.of(name)));
    }

    private static Set<String> unknownClasses(String text) {
        Set<String> unknown = named(CODE, text, name -> !CLASS.matcher(name).matches() || NOT_OURS.contains(name) || isClass(name) || isMember(name));
        for (MatchResult match : TEST.matcher(text).results().toList()) {
            for (String name : match.group(1).split(",")) {
                if (CLASSES.stream().noneMatch(known -> known.substring(known.lastIndexOf('.') + 1).matches(name.replace("*", ".*")))) {
                    unknown.add("-Dtest=" + name);
                }
            }
        }
        return unknown;
    }

    /** A class by its name or the end of its full name; a suffix of tests; a type within a class. */
    private static boolean isClass(String name) {
        return CLASSES.stream().anyMatch(known -> known.equals(name) || known.endsWith("." + name) || name.endsWith("Test") && known.endsWith(name))
                || TYPES.contains(name);
    }

    private static boolean isMember(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 && isClass(name.substring(0, dot)) && IDENTIFIERS.contains(name.substring(dot + 1));
    }

    private static Set<String> unknownHeadings(Path page, String text) {
        Set<String> unknown = new TreeSet<>();
        for (MatchResult link : HEADING_LINK.matcher(text).results().toList()) {
            if (!link.group(1).contains("://")) {
                Path target = link.group(1).isEmpty() ? page : page.toAbsolutePath().getParent().resolve(link.group(1));
                List<String> headings = (Files.exists(target) ? Project.read(target) : "").lines().filter(line -> line.startsWith("#"))
                        .map(line -> line.replaceFirst("^#+ ", "").toLowerCase(Locale.ROOT).replaceAll("[^\\w -]", "").replace(' ', '-')).toList();
                if (!headings.contains(link.group(2))) {
                    unknown.add(link.group());
                }
            }
        }
        return unknown;
    }

    @Test
    void everyAddressIsServed() {
        nothingUnknown(DocumentationTest::unknownAddresses);
    }

    @Test
    void everySettingIsRead() {
        nothingUnknown(DocumentationTest::unknownSettings);
    }

    @Test
    void everyFileIsThere() {
        nothingUnknown(DocumentationTest::unknownFiles);
    }

    @Test
    void everyClassAndTestIsThere() {
        nothingUnknown(DocumentationTest::unknownClasses);
    }

    @Test
    void everyHeadingThatIsLinkedToIsThere() {
        List<String> all = new ArrayList<>();
        pages().forEach((path, text) -> unknownHeadings(path, text).forEach(link -> all.add(path + ": " + link)));
        assertEquals(List.of(), all);
    }

    /** Pages are found by their folders; the table of rooms in DEVELOPERS.md has all of them. */
    @Test
    void everyRoomIsInTheTable() {
        String table = Project.read(Path.of("DEVELOPERS.md")).lines().filter(line -> line.startsWith("| `")).collect(Collectors.joining("\n"));
        Set<String> missing = CLASSES.stream().filter(name -> Files.exists(Project.MAIN_SOURCES.resolve("org/longsummer/" + name.replace('.', '/') + ".java")))
                .filter(name -> name.contains(".")).map(name -> name.substring(0, name.indexOf('.'))).filter(room -> !table.contains("`" + room))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), missing, "rooms that DEVELOPERS.md does not list");
    }

    @Test
    void theRulesCanFail() {
        assertEquals(Set.of("/api/units/{unit}/weighings"), unknownAddresses("see /api/units/{unit}/weighings and /api/units/{unit}/weighing"));
        assertEquals(Set.of("--prot", "LONGSUMMER_PROT", "validation.wirte"),
                unknownSettings("`--prot` and `--port`, LONGSUMMER_PROT and LONGSUMMER_PORT, -Dvalidation.wirte=true and -Dvalidation.write=true"));
        assertEquals(Set.of("web/yards/"), unknownFiles("`web/yards/` and `web/yard/`"));
        assertEquals(Set.of("-Dtest=NoSuchTest", "chain.Assesment", "store.Judging.jugde"),
                unknownClasses("`chain.Assesment`, `chain.Assessment`, `store.Judging.jugde`, -Dtest=NoSuchTest,LongsummerTest"));
        assertEquals(Set.of("](README.md#stop)"), unknownHeadings(Path.of("README.md"), "[a](README.md#stop) and [b](README.md#start)"));
    }
}
