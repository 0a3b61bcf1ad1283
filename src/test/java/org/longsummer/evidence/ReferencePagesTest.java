package org.longsummer.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.files.FileKind;

/** The pages of {@code reference/} say what the project is: their keys, classes, words, links and tests exist. */
class ReferencePagesTest {
    private static final Pattern KEY_IN_BRACKETS = Pattern.compile("\\[([a-z][a-z0-9]*(?:[-_][a-z0-9]+)+|[a-z]+[0-9]{4})](?!\\()");
    private static final Pattern KEY_IN_CODE = Pattern.compile("\\{@code ([a-z0-9_-]+)} in \\{@code reference/sources.md}");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");
    private static final Pattern LINK = Pattern.compile("\\[[^\\]]*]\\(([^)#]+)[^)]*\\)");

    private static String page(String name) {
        return Project.read(Project.REFERENCE.resolve(name));
    }

    private static List<String> cells(String line) {
        return List.of(line.split(" *\\| *", -1));
    }

    private static List<String> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().map((MatchResult match) -> match.group(1)).toList();
    }

    private static String mainSources() {
        return Project.files(Project.MAIN_SOURCES, name -> name.endsWith(".java")).stream().map(Project::read)
                .collect(Collectors.joining("\n"));
    }

    /** Of code only the comments: an index in brackets is no key. */
    private static String words(Path path) {
        String text = Project.read(path);
        return !path.toString().endsWith(".java") ? text : text.lines().map(String::strip)
                .filter(line -> line.startsWith("*") || line.startsWith("/*") || line.startsWith("//")).collect(Collectors.joining("\n"));
    }

    @Test
    void everyKeyThatIsQuotedIsASource() {
        List<Path> quoting = new ArrayList<>(Project.files(Project.MAIN_SOURCES, name -> name.endsWith(".java")));
        quoting.addAll(Project.files(Project.TEST_SOURCES, name -> name.endsWith("Test.java") && !name.startsWith("ReferencePages")));
        quoting.addAll(Project.files(Project.REFERENCE, name -> name.endsWith(".md") || name.endsWith(".csv")));
        quoting.addAll(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        String sources = page("sources.md");
        Set<String> unknown = new TreeSet<>();
        int quoted = 0;
        for (Path path : quoting) {
            String text = words(path).replaceAll("\\n *\\*? *", " ");
            for (Pattern pattern : List.of(KEY_IN_BRACKETS, KEY_IN_CODE)) {
                for (String key : found(pattern, text)) {
                    quoted++;
                    if (!sources.contains("| `" + key + "` |")) {
                        unknown.add(key + " in " + path);
                    }
                }
            }
        }
        assertTrue(unknown.isEmpty(), () -> "not in reference/sources.md: " + unknown);
        assertTrue(quoted > 40, "too few keys were found: has the way of quoting changed?");
    }

    @Test
    void everyEquationHasItsClass() {
        List<String> missing = page("equations.md").lines().filter(line -> line.startsWith("| ") && line.contains("`"))
                .map(line -> cells(line).get(cells(line).size() - 2).replace("`", ""))
                .filter(name -> !Files.exists(Project.MAIN_SOURCES.resolve("org/longsummer/" + name.replace('.', '/') + ".java"))).toList();
        assertTrue(missing.isEmpty(), () -> "reference/equations.md names " + missing);
    }

    @Test
    void everyNameOfTheNomenclatureIsInTheCode() {
        String sources = mainSources();
        List<String> strangers = table("| word | meaning | in the code | not said |").stream().flatMap(row -> found(CODE, row.get(3)).stream())
                .filter(name -> !Pattern.compile("\\b" + Pattern.quote(name) + "\\b").matcher(sources).find()).toList();
        assertTrue(strangers.isEmpty(), () -> "not in the code: " + strangers);
    }

    /** What people read: the pages and their scripts, sentences of the program, names of columns and of an answer's members. */
    private static String said() {
        String pages = Project.files(Path.of("web"), name -> name.matches(".*\\.(html|js)")).stream().map(Project::read).collect(Collectors.joining("\n"));
        String sentences = found(Pattern.compile("\"((?:[^\"\\\\\n]++|\\\\.)*+)\""), mainSources()).stream().collect(Collectors.joining("\n"));
        String columns = Arrays.stream(FileKind.values()).flatMap(kind -> kind.columns().stream()).collect(Collectors.joining(" "));
        return (pages + "\n" + sentences + "\n" + columns + "\n" + page("openapi.json")).replace('_', ' ').toLowerCase(Locale.ROOT);
    }

    private static boolean isSaid(String word, String said) {
        return Pattern.compile("(?<![a-z])" + Pattern.quote(word.toLowerCase(Locale.ROOT).replaceFirst("^the ", "")) + "(?:s|es)?(?![a-z])").matcher(said).find();
    }

    /** A word of the first column is on the screens or in files, unless its row says that only the code has it; then it is not. */
    @Test
    void everyWordIsSaidWhereItsRowSays() {
        String said = said();
        List<String> wrong = new ArrayList<>();
        for (List<String> row : table("| word | meaning | in the code | not said |")) {
            boolean onScreens = !row.get(2).endsWith("(in the code only)");
            boolean found = Stream.of(row.get(1).split(", ")).anyMatch(word -> isSaid(word, said));
            if (found != onScreens) {
                wrong.add(row.get(1) + (onScreens ? " is said nowhere" : " is said after all"));
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void noSecondWordIsUsed() {
        Set<String> quoting = Set.of("nomenclature.md", "sources.md", "security.md");
        List<Path> papers = new ArrayList<>(Project.files(Project.REFERENCE, name -> name.endsWith(".md") && !quoting.contains(name)));
        papers.addAll(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        String all = mainSources().toLowerCase(Locale.ROOT) + said() + papers.stream().map(Project::read).collect(Collectors.joining("\n")).toLowerCase(Locale.ROOT);
        List<String> used = table("| word | meaning | in the code | not said |").stream().flatMap(row -> Stream.of(row.get(4).split(", ")))
                .filter(word -> !word.isBlank()).filter(word -> isSaid(word, all)).toList();
        assertTrue(used.isEmpty(), () -> "reference/nomenclature.md has other words for " + used);
    }

    @Test
    void conditionsAndStatesAreTheirWords() {
        List<String> words = table("| word | phrase |").stream().map(row -> row.get(1).replace("`", "") + ": " + row.get(2)).toList();
        List<String> expected = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            expected.add(condition.word() + ": " + condition.phrase());
        }
        assertEquals(expected, words.subList(0, expected.size()));
        for (State state : State.values()) {
            assertTrue(words.stream().anyMatch(word -> word.startsWith(state.word() + ": ")), state::word);
        }
    }

    private static List<List<String>> table(String head) {
        List<List<String>> rows = page("nomenclature.md").lines().dropWhile(line -> !line.equals(head)).skip(2)
                .takeWhile(line -> line.startsWith("|")).map(ReferencePagesTest::cells).toList();
        assertFalse(rows.isEmpty(), head);
        return rows;
    }

    /** The build names what ships; what is compiled into the phone's script is no library in the jar. */
    @Test
    void theNoticesListExactlyTheLibrariesThatShip() {
        Set<String> shipped = Stream.of(Project.read(Path.of("target", "shipped-libraries")).strip().split(File.pathSeparator))
                .map(jar -> Path.of(jar).getFileName().toString().replaceFirst("-\\d.*$", "")).collect(Collectors.toCollection(TreeSet::new));
        Set<String> listed = page("notices.md").lines().dropWhile(line -> !line.equals("| library | licence |")).skip(2).takeWhile(line -> line.startsWith("|"))
                .map(line -> cells(line).get(1)).filter(names -> !names.startsWith("TeaVM")).map(names -> names.replaceFirst("^[^:]*: ", "").replaceAll(" \\([^)]*\\)", ""))
                .flatMap(names -> Stream.of(names.split(", "))).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(String.join("\n", shipped), String.join("\n", listed));
        assertTrue(page("notices.md").contains("| TeaVM's Java class library"));
    }

    @Test
    void everyDecisionIsShortAndSaysWhichTestWouldFail() {
        String tests = Project.files(Project.TEST_SOURCES, name -> name.endsWith("Test.java")).stream()
                .map(path -> path.getFileName().toString()).collect(Collectors.joining(" "));
        List<Path> decisions = Project.files(Project.REFERENCE.resolve("decisions"), name -> name.endsWith(".md"));
        assertFalse(decisions.isEmpty());
        for (Path decision : decisions) {
            String text = Project.read(decision);
            assertTrue(text.lines().count() <= 40, decision::toString);
            for (String part : List.of("**Question.**", "**Options.**", "**Decision.**", "because", "**Consequences.**", "**Confirmation.**")) {
                assertTrue(text.contains(part), () -> decision + " lacks " + part);
            }
            found(Pattern.compile("`([A-Za-z]+Test)\\b[^`]*`"), text).forEach(test -> assertTrue(tests.contains(test + ".java"),
                    () -> decision + " names " + test + ", which is not there"));
        }
    }

    @Test
    void everyLinkLeadsSomewhere() {
        List<Path> pages = new ArrayList<>(Project.files(Project.REFERENCE, name -> name.endsWith(".md")));
        List.of("README.md", "DEVELOPERS.md").forEach(name -> pages.addAll(Files.exists(Path.of(name)) ? List.of(Path.of(name)) : List.of()));
        List<String> broken = new ArrayList<>();
        for (Path page : pages) {
            for (String target : found(LINK, Project.read(page))) {
                if (!target.contains("://") && !Files.exists(page.toAbsolutePath().getParent().resolve(target))) {
                    broken.add(page + " -> " + target);
                }
            }
        }
        assertTrue(broken.isEmpty(), () -> "broken links: " + broken);
    }
}
