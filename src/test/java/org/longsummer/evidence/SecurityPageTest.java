package org.longsummer.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** {@code reference/security.md} has every requirement of levels 1 and 2 once, and names tests that exist. */
class SecurityPageTest {
    /** Sections and their requirements of level 1 and of level 2, as [owasp-asvs-5] numbers them. */
    private static final String LEVEL_1 = "1.2:1-5 1.3:1-2 1.5:1 2.1:1 2.2:1-2 2.3:1 3.2:1-2 3.3:1 3.4:1-2 3.5:1-3 4.1:1 4.4:1 5.2:1-2 5.3:1-2 6.1:1 6.2:1-8 "
            + "6.3:1-2 6.4:1-2 7.2:1-4 7.4:1-2 8.1:1 8.2:1-2 8.3:1 9.1:1-3 9.2:1 10.4:1-5 11.3:1-2 11.4:1 12.1:1 12.2:1-2 13.4:1 14.2:1 14.3:1 15.1:1 15.2:1 15.3:1";
    private static final String LEVEL_2 = "1.1:1-2 1.2:6-9 1.3:3-11 1.4:1-3 1.5:2 2.1:2-3 2.2:3 2.3:2-4 2.4:1 3.3:2-4 3.4:3-6 3.5:4-5 3.7:1-2 4.1:2-3 4.2:1 4.3:1-2 "
            + "4.4:2-4 5.1:1 5.2:3 5.4:1-3 6.1:2-3 6.2:9-12 6.3:3-4 6.4:3-4 6.5:1-5 6.6:1-3 6.8:1-4 7.1:1-3 7.3:1-2 7.4:3-5 7.5:1-2 7.6:1-2 8.1:2 8.2:3 8.4:1 "
            + "9.2:2-4 10.1:1-2 10.2:1-2 10.3:1-4 10.4:6-11 10.5:1-5 10.6:1-2 10.7:1-3 11.1:1-2 11.2:1-3 11.3:3 11.4:2-4 11.5:1 11.6:1 12.1:2-3 12.3:1-4 13.1:1 "
            + "13.2:1-5 13.3:1-2 13.4:2-5 14.1:1-2 14.2:2-4 14.3:2-3 15.1:2-3 15.2:2-3 15.3:2-7 16.1:1 16.2:1-5 16.3:1-4 16.4:1-3 16.5:1-3 17.1:1 17.2:1-4 17.3:1-2";
    private static final Set<String> STANDINGS = Set.of("met", "in part", "not met", "user", "-");
    private static final Pattern NAMED = Pattern.compile("`([A-Z]\\w+Test)(?:\\.(\\w+))?`");

    private static String page() {
        return Project.read(Project.REFERENCE.resolve("security.md"));
    }

    private static List<String> numbers(String ranges) {
        return Stream.of(ranges.split(" ")).flatMap(section -> {
            String[] parts = section.split(":");
            String[] ends = parts[1].split("-");
            return IntStream.rangeClosed(Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1])).mapToObj(last -> parts[0] + "." + last);
        }).toList();
    }

    private static List<List<String>> rows() {
        return page().lines().filter(line -> line.matches("\\| \\d+\\.\\d+\\.\\d+ \\|.*")).map(line -> Arrays.asList(line.split(" *\\| *", -1))).toList();
    }

    @Test
    void everyRequirementOfBothLevelsIsThereOnce() {
        assertEquals(70, numbers(LEVEL_1).size(), "as many as the standard has of level 1");
        assertEquals(183, numbers(LEVEL_2).size(), "as many as the standard has of level 2");
        List<String> there = new ArrayList<>(rows().stream().map(row -> row.get(1)).toList());
        page().lines().filter(line -> !line.startsWith("|")).flatMap(line -> Pattern.compile("\\b1[07]\\.\\d+\\.\\d+\\b").matcher(line).results())
                .map(MatchResult::group).forEach(there::add);
        List<String> wanted = Stream.concat(numbers(LEVEL_1).stream(), numbers(LEVEL_2).stream()).collect(Collectors.toCollection(ArrayList::new));
        wanted.add("1.2.10");
        assertEquals(wanted.stream().sorted().toList(), there.stream().sorted().toList());
    }

    @Test
    void everyRowSaysItsLevelWhereItStandsAndWhy() {
        for (List<String> row : rows()) {
            String level = numbers(LEVEL_1).contains(row.get(1)) ? "1" : numbers(LEVEL_2).contains(row.get(1)) ? "2" : "3";
            assertEquals(level, row.get(3), row::toString);
            assertTrue(STANDINGS.contains(row.get(4)), row::toString);
            assertTrue(row.get(4).equals("met") || !row.get(5).isEmpty(), () -> "it must say why: " + row);
            assertTrue(!row.get(4).equals("met") || !row.get(5).isEmpty() || !row.get(6).isEmpty(), () -> "it must say where: " + row);
        }
    }

    @Test
    void everyTestThatIsNamedIsThere() {
        TreeSet<String> missing = new TreeSet<>();
        int named = 0;
        for (MatchResult match : NAMED.matcher(page()).results().toList()) {
            named++;
            List<Path> files = Project.files(Project.TEST_SOURCES, name -> name.equals(match.group(1) + ".java"));
            if (files.size() != 1 || match.group(2) != null && !Project.read(files.get(0)).contains("void " + match.group(2) + "(")) {
                missing.add(match.group());
            }
        }
        assertTrue(missing.isEmpty(), () -> "named in reference/security.md and not there: " + missing);
        assertTrue(named > 100);
    }
}
