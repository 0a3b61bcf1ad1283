package org.longsummer.performance;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.FleetProspects;
import org.longsummer.chain.UnitProspects;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.files.Findings;
import org.longsummer.files.UnitsFile;
import org.longsummer.files.VisitsFile;

/**
 * What one visit costs of one core, stage by stage: microseconds of processor time, so that waiting for others does not count.
 *
 * <p>Arguments: {@code units.csv visits.csv [rounds]}.
 */
public final class ChainCost {
    private ChainCost() {}

    public static void main(String[] arguments) throws Exception {
        Path unitsFile = Path.of(arguments[0]);
        Path visitsFile = Path.of(arguments[1]);
        int rounds = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 3;
        for (int round = 1; round <= rounds; round++) {
            round(unitsFile, visitsFile);
        }
    }

    private static void round(Path unitsFile, Path visitsFile) throws Exception {
        long start = now();
        Findings findings = new Findings();
        Map<String, Unit> units = new HashMap<>();
        UnitsFile.read(unitsFile, id -> Optional.empty(), findings).forEach((id, unit) -> units.put(id, unit.unit()));
        long unitsRead = now();
        List<Visit> visits = new ArrayList<>();
        VisitsFile.read(visitsFile, units::containsKey, findings, visits::add);
        findings.refuseIfAny();
        long visitsRead = now();
        Closings closings = Assessment.learn(units, visits);
        long learned = now();
        TreeMap<String, List<Visit>> byUnit = new TreeMap<>();
        visits.forEach(visit -> byUnit.computeIfAbsent(visit.unitId(), id -> new ArrayList<>()).add(visit));
        FleetProspects fleet = new FleetProspects(LifeCurve.RENTAL, Optional.empty());
        long[] spent = new long[2];
        double[] sum = new double[1];
        byUnit.forEach((id, ofUnit) -> {
            long before = now();
            List<Verdict> verdicts = Assessment.briefly(units.get(id), ofUnit, closings);
            long judged = now();
            UnitProspects prospects = fleet.of(units.get(id));
            for (Verdict verdict : verdicts) {
                sum[0] += verdict.probabilityOfImpact() + prospects.after(verdict).limit().withinHorizon();
            }
            spent[0] += judged - before;
            spent[1] += now() - judged;
        });
        int n = visits.size();
        System.out.printf("%d visits: units read %.2f, visits read %.2f, learned %.2f, judged %.2f, outlook %.2f us a visit; sum %.17g%n",
                n, (unitsRead - start) / 1e3 / n, (visitsRead - unitsRead) / 1e3 / n, (learned - visitsRead) / 1e3 / n, spent[0] / 1e3 / n,
                spent[1] / 1e3 / n, sum[0]);
    }

    private static long now() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
