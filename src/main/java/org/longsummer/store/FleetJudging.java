package org.longsummer.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Visit;

/**
 * Judges many units by what counts now, on all processors: one thread reads visits and writes verdicts, the others judge what lies in
 * between. A few thousand visits are in memory at any moment, however large the fleet.
 */
final class FleetJudging {
    private static final int UNITS_AT_ONCE = 50;

    private final Handle handle;
    private final Closings closings;
    private final Consumer<String> unitJudged;

    /** @param unitJudged told the id of each unit that was judged */
    FleetJudging(Handle handle, Closings closings, Consumer<String> unitJudged) {
        this.handle = handle;
        this.closings = closings;
        this.unitJudged = unitJudged;
    }

    /** Judges these units and writes their verdicts and their standings; what is worth doing is worked out later. */
    void judge(List<String> unitIds) {
        if (unitIds.isEmpty()) {
            return;
        }
        if (unitIds.size() <= UNITS_AT_ONCE) {
            write(part(unitIds).judged());
            return;
        }
        try (Workers workers = new Workers()) {
            workers.inOrder(Parts.of(unitIds, UNITS_AT_ONCE).stream().map(some -> (Callable<Map<String, List<Verdict>>>) part(some)::judged).iterator(),
                    this::write);
        }
    }

    /** Units with the visits that count, ready to be judged by another thread. */
    private record Part(List<FleetUnit> units, Map<String, List<Visit>> visits, Closings closings) {
        Map<String, List<Verdict>> judged() {
            return FleetJudging.judged(units, visits, closings);
        }
    }

    /** The verdicts of some units, by unit, without reasons. */
    static Map<String, List<Verdict>> judged(List<FleetUnit> units, Map<String, List<Visit>> visits, Closings closings) {
        Map<String, List<Verdict>> verdicts = new LinkedHashMap<>();
        units.forEach(unit -> verdicts.put(unit.id(), Assessment.briefly(unit.unit(), visits.getOrDefault(unit.id(), List.of()), closings)));
        return verdicts;
    }

    private Part part(List<String> unitIds) {
        return new Part(Units.among(handle, unitIds), Visits.currentByUnit(handle, unitIds), closings);
    }

    private void write(Map<String, List<Verdict>> verdicts) {
        Verdicts.replace(handle, verdicts);
        Standings.judge(handle, verdicts);
        LookingAhead.overtake(handle, verdicts.keySet());
        verdicts.keySet().forEach(unitJudged);
    }
}
