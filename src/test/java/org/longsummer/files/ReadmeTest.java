package org.longsummer.files;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Decimal;

/** The worked visit of the README says what the files beside it give. */
class ReadmeTest {
    private static final Path FILES = Path.of("demo-data", "one-visit");

    @Test
    void theWorkedVisitIsTrue() throws IOException, FileRefused {
        String readme = Files.readString(Path.of("README.md"));
        for (Verdict verdict : verdicts()) {
            if (List.of("one", "four", "five").contains(verdict.visit().id())) {
                String row = row(verdict);
                assertTrue(readme.contains(row), "README.md lacks: " + row);
            }
        }
    }

    private static List<Verdict> verdicts() throws IOException, FileRefused {
        Findings findings = new Findings();
        Map<String, Unit> units = new TreeMap<>();
        UnitsFile.read(FILES.resolve("units.csv"), id -> Optional.empty(), findings).forEach((id, unit) -> units.put(id, unit.unit()));
        List<Visit> visits = new ArrayList<>();
        VisitsFile.read(FILES.resolve("visits.csv"), units::containsKey, findings, visits::add);
        findings.refuseIfAny();
        Unit unit = units.get("HERON-7");
        return Assessment.ofUnit(unit, visits, Assessment.learn(units, visits));
    }

    private static String row(Verdict verdict) {
        var departure = verdict.departure();
        double split = verdict.visit().readings().split().orElseThrow().fahrenheit();
        double amps = verdict.visit().readings().amps().orElseThrow().amperes();
        var expectedSplit = departure.expectedSplit().orElseThrow();
        var expectedAmps = departure.expectedAmps().orElseThrow();
        return "| " + Decimal.text(split, 1) + " °F | " + Decimal.text(expectedSplit.value().fahrenheit(), 1) + " ± "
                + Decimal.text(2 * expectedSplit.standardUncertainty().fahrenheit(), 1) + " | " + Decimal.text(amps, 1) + " A | "
                + Decimal.text(expectedAmps.value().amperes(), 1) + " ± "
                + Decimal.text(2 * expectedAmps.standardUncertainty().amperes(), 1) + " | " + verdict.state().word();
    }
}
