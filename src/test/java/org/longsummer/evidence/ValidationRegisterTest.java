package org.longsummer.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** Runs last: the page must say what the tests of this run found. */
@Order(Integer.MAX_VALUE)
class ValidationRegisterTest {

    @Test
    void thePageSaysWhatTheTestsFound() {
        String found = ValidationRegister.page(ValidationRegister.rows());
        if (Boolean.getBoolean("validation.write")) {
            Project.write(ValidationRegister.PAGE, found);
        }
        String committed = Files.exists(ValidationRegister.PAGE) ? Project.read(ValidationRegister.PAGE) : "";
        assertEquals(committed, found, "reference/validation.md differs from what the tests found. After a run of all the tests,"
                + " mvn verify -Dvalidation.write=true writes it; look at what moved before committing it.");
    }

    @Test
    void everySourceOfThePageIsInTheListOfSources() {
        String sources = Project.read(Project.REFERENCE.resolve("sources.md"));
        List<String> unknown = ValidationRegister.rows().stream().map(ValidationRegister.Row::source)
                .filter(source -> !sources.contains("`" + source + "`")).distinct().toList();
        assertTrue(unknown.isEmpty(), () -> "not in reference/sources.md: " + unknown);
    }

    @Test
    void everyTableIsReadByATest() {
        List<String> unread = Project.files(Project.TABLES, name -> name.endsWith(".csv")).stream()
                .map(path -> path.getFileName().toString().replace(".csv", ""))
                .filter(name -> !Files.exists(ReferenceTable.READ.resolve(name))).toList();
        assertTrue(unread.isEmpty(), () -> "no test reads " + unread + "; delete them or use them (runs of single tests do not count)");
    }

    @Test
    void aPointBeyondWhatIsAllowedFails() {
        Comparison comparison = Comparison.absolute(Guilty.class, "guilty", "K", "law", 1);
        comparison.point("here", 3, 1);
        AssertionError error = assertThrows(AssertionError.class, comparison::close);
        assertTrue(error.getMessage().contains("here: 3.0 instead of 1.0"), error.getMessage());
        Comparison notANumber = Comparison.relative(Guilty.class, "guilty", "law", 1);
        notANumber.point("here", Double.NaN, 1);
        assertThrows(AssertionError.class, notANumber::close);
        assertFalse(ValidationRegister.page(List.of(new ValidationRegister.Row("a", "b", "c", 1, "d", "e"))).isEmpty());
    }

    /** Its rows are made to fail and are no evidence. */
    private static final class Guilty {}
}
