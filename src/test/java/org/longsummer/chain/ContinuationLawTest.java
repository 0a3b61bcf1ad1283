package org.longsummer.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.UnitsFile;
import org.longsummer.files.VisitsFile;

/** Going on from a history says what judging the whole history anew says, and leaves the history as it was. */
@Tag("slow")
class ContinuationLawTest {
    private static final Path FLEET = Path.of("src/test/resources/fleet-dev");

    @Test
    void oneMoreVisitIsJudgedAsInTheWholeHistory() throws IOException, FileRefused {
        Map<String, Unit> units = new TreeMap<>();
        List<Visit> all = new ArrayList<>();
        Findings findings = new Findings();
        UnitsFile.read(FLEET.resolve("units.csv"), id -> Optional.empty(), findings).forEach((id, unit) -> units.put(id, unit.unit()));
        VisitsFile.read(FLEET.resolve("visits.csv"), units::containsKey, findings, all::add);
        Closings closings = Assessment.learn(units, all);
        int compared = 0;
        for (Unit unit : units.values()) {
            List<Visit> visits = all.stream().filter(visit -> visit.unitId().equals(unit.id())).sorted(Assessment.IN_ORDER).toList();
            for (int last : List.of(0, visits.size() / 2, visits.size() - 1)) {
                compare(unit, visits.subList(0, last + 1), closings);
                compared++;
            }
        }
        assertTrue(compared > 200, "the fleet is smaller than it was");
    }

    private static void compare(Unit unit, List<Visit> visits, Closings closings) {
        Visit next = visits.get(visits.size() - 1);
        Continuation continuation = new Continuation(unit, visits.subList(0, visits.size() - 1), closings);
        Verdict whole = Assessment.ofUnit(unit, visits, closings).stream().filter(verdict -> verdict.visit().equals(next)).findFirst().orElseThrow();
        List<Verdict> onlyOne = Assessment.explaining(unit, visits, closings, next::equals);
        for (Verdict one : List.of(continuation.judge(next), continuation.judge(next), onlyOne.get(visits.size() - 1))) {
            assertEquals(whole.state(), one.state());
            assertEquals(whole.probabilityOfImpact(), one.probabilityOfImpact());
            assertEquals(whole.departure(), one.departure());
            assertEquals(whole.evidence(), one.evidence());
            assertEquals(whole.findings(), one.findings());
            assertEquals(whole.nextBestReading(), one.nextBestReading());
        }
    }
}
