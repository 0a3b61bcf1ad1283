package org.longsummer.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;

/**
 * Figures of merit of verdicts on a simulated fleet. Apart are units found dead, visits saved twice, and honest retakes of what
 * practice would not judge either.
 */
final class Scoring {
    private static final double[] EDGES = {0, 0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 0.98, 1.0001};
    private final List<ScoredVisit> all = new ArrayList<>();
    private final Map<String, List<ScoredVisit>> byUnit = new TreeMap<>();
    private final List<ScoredVisit> dead = new ArrayList<>();

    Scoring(SimulatedFleet fleet, Map<String, Verdict> verdicts) {
        fleet.visits().stream().sorted(Comparator.comparing(org.longsummer.chain.visit.Visit::unitId).thenComparing(v -> v.at())
                .thenComparing(v -> v.id())).forEach(visit -> {
                    ScoredVisit scored = new ScoredVisit(visit, fleet.truth().get(visit.id()), verdicts.get(visit.id()));
                    if (scored.isDead()) {
                        dead.add(scored);
                    } else if (!scored.truth().repeat() && !scored.isExcused()) {
                        all.add(scored);
                        byUnit.computeIfAbsent(visit.unitId(), id -> new ArrayList<>()).add(scored);
                    }
                });
    }

    private List<ScoredVisit> where(Predicate<ScoredVisit> condition) {
        return all.stream().filter(condition).toList();
    }

    private List<ScoredVisit> good() {
        return where(v -> !v.truth().isGross());
    }

    private List<ScoredVisit> impact() {
        return where(v -> !v.truth().isGross() && v.truth().hasImpact());
    }

    private List<ScoredVisit> faultFree() {
        return where(v -> v.truth().isFaultFree());
    }

    static double share(List<ScoredVisit> visits, Predicate<ScoredVisit> of) {
        return visits.isEmpty() ? Double.NaN : (double) visits.stream().filter(of).count() / visits.size();
    }

    double notCoolingAct() {
        return share(dead, ScoredVisit::isAct);
    }

    double grossCaught() {
        return share(where(v -> v.truth().isGross()), ScoredVisit::isRetake);
    }

    double goodRetaken() {
        return share(good(), ScoredVisit::isRetake);
    }

    double falseAct() {
        return share(faultFree(), ScoredVisit::isAct);
    }

    double falseActOrDrifting() {
        return share(faultFree(), v -> v.isAct() || v.verdict().state() == State.DRIFTING);
    }

    /** Acts on visits at which nothing is off by 5 %. */
    double prematureAct() {
        return share(where(v -> !v.truth().isGross() && v.truth().magnitude() < 0.05), ScoredVisit::isAct);
    }

    double detectAct() {
        return share(impact(), ScoredVisit::isAct);
    }

    /** Chance that a visit with impact ranks above a fault-free one; ties count half. */
    double area() {
        List<ScoredVisit> sick = impact();
        List<ScoredVisit> sound = faultFree();
        double above = 0;
        for (ScoredVisit s : sick) {
            for (ScoredVisit f : sound) {
                above += s.suspicion() > f.suspicion() ? 1 : s.suspicion() == f.suspicion() ? 0.5 : 0;
            }
        }
        return above / sick.size() / sound.size();
    }

    /** The suspicion above which a share of the fault-free visits would be called. */
    double limit(double falseAlarms) {
        double[] sound = faultFree().stream().mapToDouble(v -> -v.suspicion()).sorted().toArray();
        return -sound[Math.min(sound.length - 1, (int) (falseAlarms * sound.length))];
    }

    double detected(double falseAlarms) {
        double limit = limit(falseAlarms);
        return share(impact(), v -> v.suspicion() > limit);
    }

    double foundAndNamed(double falseAlarms) {
        double limit = limit(falseAlarms);
        return share(impact().stream().filter(ScoredVisit::isOneOfSix).toList(),
                v -> v.suspicion() > limit && v.likeliestOfSix().word().equals(v.truth().condition()));
    }

    /** Share of the units' first crossings into impact that are called by the first visit with impact. */
    double crossingsInTime(double falseAlarms) {
        double limit = limit(falseAlarms);
        int crossings = 0;
        int inTime = 0;
        for (List<ScoredVisit> unit : byUnit.values()) {
            List<ScoredVisit> good = unit.stream().filter(v -> !v.truth().isGross()).toList();
            int first = 0;
            while (first < good.size() && !good.get(first).truth().hasImpact()) {
                first++;
            }
            if (first == good.size()) {
                continue;
            }
            int from = first;
            while (from > 0 && !good.get(from - 1).truth().isHealthy() && good.get(from - 1).truth().magnitude() >= 0.05) {
                from--;
            }
            crossings++;
            inTime += good.subList(from, first + 1).stream().anyMatch(v -> v.suspicion() > limit) ? 1 : 0;
        }
        return (double) inTime / crossings;
    }

    /** Good visits whose condition is one that the seven probabilities speak of. */
    private List<ScoredVisit> calibrated() {
        return where(v -> !v.truth().isGross() && !v.truth().condition().equals("fan_drag"));
    }

    /** One less the mean square of probability minus truth over seven classes, over that of the classes' frequencies. */
    double brierSkill() {
        List<ScoredVisit> visits = calibrated();
        double brier = 0;
        double frequencies = 0;
        for (Condition condition : withNone()) {
            String word = condition == Condition.NONE ? "healthy" : condition.word();
            double frequency = share(visits, v -> v.truth().condition().equals(word));
            for (ScoredVisit v : visits) {
                double truth = v.truth().condition().equals(word) ? 1 : 0;
                brier += square(v.verdict().probabilities().of(condition) - truth);
                frequencies += square(frequency - truth);
            }
        }
        return 1 - brier / frequencies;
    }

    private static List<Condition> withNone() {
        List<Condition> all = new ArrayList<>(ScoredVisit.SIX);
        all.add(Condition.NONE);
        return all;
    }

    /** Mean distance between the probability of "none" and how often there was none, over eight bins. */
    double reliabilityError() {
        List<ScoredVisit> visits = calibrated();
        double error = 0;
        for (int bin = 0; bin + 1 < EDGES.length; bin++) {
            double low = EDGES[bin];
            double high = EDGES[bin + 1];
            List<ScoredVisit> in = visits.stream().filter(v -> 1 - v.suspicion() >= low && 1 - v.suspicion() < high).toList();
            if (!in.isEmpty()) {
                double said = in.stream().mapToDouble(v -> 1 - v.suspicion()).average().orElseThrow();
                error += Math.abs(said - share(in, v -> v.truth().isHealthy())) * in.size() / visits.size();
            }
        }
        return error;
    }

    ExpectationScoring split() {
        return new ExpectationScoring(faultFree(), good(), true);
    }

    ExpectationScoring amps() {
        return new ExpectationScoring(faultFree(), good(), false);
    }

    static double square(double x) {
        return x * x;
    }
}
