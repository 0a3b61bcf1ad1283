package org.longsummer.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.Method;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.demo.LargeFleet;
import org.longsummer.files.Findings;
import org.longsummer.files.UnitsFile;
import org.longsummer.files.VisitsFile;

/**
 * What the method of this number says of an invented fleet: pinned output, no reference. It is held so that nobody changes what is said
 * without changing the number by which records know that they are to be judged again.
 */
class MethodPinnedTest {
    private static final Path PLACE = Path.of("src", "test", "resources", "method");
    private static final int UNITS = 30;
    private static final int VISITS = 8;

    @TempDir
    Path directory;

    @Test
    void aMethodThatSaysSomethingElseHasAnotherNumber() throws Exception {
        Path pinned = PLACE.resolve("method-" + Method.NUMBER + ".csv");
        List<String> said = said();
        assertTrue(said.size() > 200, () -> "hardly anything was judged: " + said.size());
        if (Boolean.getBoolean("method.write") && !Files.exists(pinned)) {
            Files.createDirectories(PLACE);
            Files.writeString(pinned, String.join("\n", said) + "\n");
        }
        assertEquals(String.join("\n", Files.readAllLines(pinned)), String.join("\n", said), "Verdicts changed. Raise Method.NUMBER by one "
                + "and write what the new method says: mvn test -Dtest=MethodPinnedTest -Dmethod.write=true");
    }

    private List<String> said() throws Exception {
        LargeFleet.write(directory, UNITS, VISITS);
        Findings findings = new Findings();
        Map<String, Unit> units = new TreeMap<>();
        UnitsFile.read(directory.resolve("units.csv"), id -> Optional.empty(), findings).forEach((id, unit) -> units.put(id, unit.unit()));
        List<Visit> visits = new ArrayList<>();
        VisitsFile.read(directory.resolve("visits.csv"), units::containsKey, findings, visits::add);
        findings.refuseIfAny();
        List<String> said = new ArrayList<>(List.of("visit_id,state,condition,p_steady,p_impact"));
        Assessment.ofFleet(units, visits, verdict -> said.add(line(verdict)));
        return said;
    }

    /** Three figures: what is seen on pages, and the same on every processor. */
    private static String line(Verdict verdict) {
        return String.join(",", verdict.visit().id(), verdict.state().word(), verdict.condition().word(),
                figures(verdict.probabilities().of(org.longsummer.chain.condition.Condition.NONE)), figures(verdict.probabilityOfImpact()));
    }

    private static String figures(double number) {
        return new BigDecimal(number).round(new MathContext(3)).toPlainString();
    }
}
