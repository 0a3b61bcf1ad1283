package org.longsummer.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;

/** A verdict uses only what was known when it was given: nothing later, not the work that followed, not the order of the rows. */
class CausalityLawTest {
    private static final int CUTS = 5;
    private static SimulatedFleet fleet;
    private static Map<String, VerdictFigures> whole;

    @BeforeAll
    static void judge() {
        fleet = SimulatedFleet.dev();
        whole = VerdictFigures.of(fleet.judged());
    }

    private static List<Instant> cuts() {
        List<Instant> moments = fleet.visits().stream().map(Visit::at).distinct().sorted().toList();
        List<Instant> cuts = new ArrayList<>();
        for (int k = 1; k <= CUTS; k++) {
            cuts.add(moments.get(k * moments.size() / (CUTS + 1)));
        }
        return cuts;
    }

    private static SimulatedFleet until(Instant moment) {
        return new SimulatedFleet(fleet.units(), fleet.visits().stream().filter(v -> !v.at().isAfter(moment)).toList(), fleet.truth());
    }

    private static SimulatedFleet changedAt(Instant moment, UnaryOperator<Visit> change) {
        return until(moment).with(visit -> visit.at().equals(moment) ? change.apply(visit) : visit);
    }

    @Test
    void laterVisitsMoveNothing() {
        for (Instant moment : cuts()) {
            VerdictFigures.of(until(moment).judged()).forEach((id, figures) -> assertEquals(whole.get(id), figures, id + " cut at " + moment));
        }
    }

    @Test
    void workDoneAfterTheReadingsMovesNothing() {
        for (Instant moment : cuts()) {
            SimulatedFleet hidden = changedAt(moment, CausalityLawTest::withoutWork);
            VerdictFigures.of(hidden.judged()).forEach((id, figures) -> assertEquals(whole.get(id), figures, id + " at " + moment));
        }
    }

    private static Visit withoutWork(Visit v) {
        return new Visit(v.id(), v.unitId(), v.at(), v.offset(), v.technician(), v.instruments(), v.readings(), v.fanSpeed(),
                v.powerSource(), v.filter(), v.coil(), v.icedCoil(), Set.of(), v.notes());
    }

    /** Supply air 6 °F warmer and a fifth more amps. */
    @Test
    void theExpectationDoesNotFollowTheReading() {
        for (Instant moment : cuts()) {
            SimulatedFleet bumped = changedAt(moment, CausalityLawTest::bumped);
            Map<String, VerdictFigures> verdicts = VerdictFigures.of(bumped.judged());
            for (Visit visit : bumped.visits()) {
                VerdictFigures before = whole.get(visit.id());
                VerdictFigures after = verdicts.get(visit.id());
                if (visit.at().equals(moment)) {
                    assertEquals(before.expected(), after.expected(), visit.id());
                } else {
                    assertEquals(before, after, visit.id());
                }
            }
        }
    }

    private static Visit bumped(Visit v) {
        ReadingsBuilder readings = new ReadingsBuilder(v.readings());
        v.readings().supplyDryBulb().map(t -> t.plus(TemperatureDifference.fahrenheit(6))).ifPresent((Temperature t) -> readings.supplyDryBulb(t));
        v.readings().amps().ifPresent(amps -> readings.amps(new Current(amps.amperes() * 1.2)));
        return new Visit(v.id(), v.unitId(), v.at(), v.offset(), v.technician(), v.instruments(), readings.build(), v.fanSpeed(),
                v.powerSource(), v.filter(), v.coil(), v.icedCoil(), v.workDone(), v.notes());
    }

    @Test
    void theOrderOfTheRowsDoesNotMatter() {
        List<Visit> shuffled = new ArrayList<>(fleet.visits());
        Collections.shuffle(shuffled, new Random(20240607));
        assertEquals(whole, VerdictFigures.of(new SimulatedFleet(fleet.units(), shuffled, fleet.truth()).judged()));
    }

    /** One unit's visits and the closings are enough to judge it anywhere. */
    @Test
    void replayingOneUnitGivesTheSame() {
        Closings closings = Assessment.learn(fleet.units(), fleet.visits());
        Map<String, Verdict> replayed = new TreeMap<>();
        fleet.units().forEach((id, unit) -> Assessment.ofUnit(unit, fleet.visits().stream().filter(v -> v.unitId().equals(id)).toList(),
                closings).forEach(verdict -> replayed.put(verdict.visit().id(), verdict)));
        assertEquals(whole, VerdictFigures.of(replayed));
    }

    /** The comparison sees a difference where there is one. */
    @Test
    void aChangedReadingMovesItsOwnVerdict() {
        Instant moment = cuts().get(2);
        Map<String, VerdictFigures> verdicts = VerdictFigures.of(changedAt(moment, CausalityLawTest::bumped).judged());
        assertTrue(fleet.visits().stream().filter(v -> v.at().equals(moment)).anyMatch(v -> !whole.get(v.id()).equals(verdicts.get(v.id()))));
    }
}
