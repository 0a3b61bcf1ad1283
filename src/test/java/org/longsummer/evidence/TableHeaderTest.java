package org.longsummer.evidence;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every table says where its numbers come from before it gives them. */
class TableHeaderTest {
    private static final List<String> ASKED = List.of("document", "edition", "table", "page", "printed by", "read in", "licence", "kind");

    @Test
    void everyTableNamesItsOrigin() {
        List<String> missing = new ArrayList<>();
        for (Path table : Project.files(Project.TABLES, name -> name.endsWith(".csv"))) {
            for (String entry : ASKED) {
                if (Project.read(table).lines().takeWhile(line -> line.startsWith("#")).noneMatch(line -> line.matches("# " + entry + ": .+"))) {
                    missing.add(table.getFileName() + " has no line '# " + entry + ": ...'");
                }
            }
        }
        assertTrue(missing.isEmpty(), () -> String.join("\n", missing));
    }
}
