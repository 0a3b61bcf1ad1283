package org.longsummer.chain.departure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.VisitSketch;
import org.longsummer.chain.visit.Work;
import org.longsummer.science.uncertainty.Budget;
import org.longsummer.science.uncertainty.Component;
import org.longsummer.science.uncertainty.Component.Source;

/** The lines of a budget add up to what they are the lines of, whatever the history. */
class BudgetLawTest {
    private static final Unit UNIT = VisitSketch.unit("B1");

    /** Two seasons: other technicians, two readings of one day, a cleaning, amps or humidity not read, at the end a fault. */
    private static List<Verdict> history() {
        Random random = new Random(7);
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            VisitSketch sketch = new VisitSketch().at(LocalDateTime.of(2023 + i / 12, 5, 4, 9, 0).plusDays(12L * (i % 12) - i % 2 * 11)
                    .plusHours(i % 3)).by(i % 5 == 0 ? "Ada" : "Ben").returnAir(70 + 10 * random.nextDouble(), i % 6 == 4 ? Double.NaN : 45)
                    .ambient(75 + 30 * random.nextDouble());
            sketch.asExpected(UNIT, 0.05 + 0.03 * random.nextGaussian() - (i > 18 ? 0.02 * (i - 18) : 0), 0.02 * random.nextGaussian());
            if (i == 9) {
                sketch.then(Work.CONDENSER_COIL, Work.EVAPORATOR_COIL);
            }
            visits.add((i % 7 == 6 ? sketch.amps(Double.NaN) : sketch).visit("b" + (100 + i), UNIT));
        }
        return Assessment.ofUnit(UNIT, visits, new Closings());
    }

    private static double relative(Verdict verdict, boolean split) {
        Departure d = verdict.departure();
        return split ? d.expectedSplit().orElseThrow().standardUncertainty().kelvins() / d.expectedSplit().orElseThrow().value().kelvins()
                : d.expectedAmps().orElseThrow().standardUncertainty().amperes() / d.expectedAmps().orElseThrow().value().amperes();
    }

    private static Budget budget(Verdict verdict, boolean split) {
        return split ? verdict.departure().expectedSplit().orElseThrow().budget() : verdict.departure().expectedAmps().orElseThrow().budget();
    }

    private static Map<Source, Double> bySource(Budget budget) {
        Map<Source, Double> variances = new EnumMap<>(Source.class);
        for (Source source : Source.values()) {
            variances.put(source, budget.variance(source));
        }
        return variances;
    }

    @Test
    void theLinesAddUp() {
        for (Verdict verdict : history()) {
            for (boolean split : new boolean[] {true, false}) {
                Budget budget = budget(verdict, split);
                assertEquals(relative(verdict, split), budget.standardUncertainty(), 1e-9, verdict.visit().id());
                double sum = bySource(budget).values().stream().mapToDouble(v -> v).sum();
                assertEquals(budget.variance(), sum, 1e-12);
            }
        }
    }

    @Test
    void everySourceHasItsOwnLine() {
        Verdict verdict = history().get(5);
        for (boolean split : new boolean[] {true, false}) {
            bySource(budget(verdict, split)).forEach((source, variance) -> assertTrue(variance > 0, source + " has no line"));
            for (Component line : budget(verdict, split).components()) {
                assertTrue(Double.isFinite(line.contribution()) && !line.name().isBlank(), line.toString());
            }
        }
    }

    /** At the first visit the class is the largest unknown; it fades as the unit itself is learned. */
    @Test
    void whatTheClassLeavesOpenFades() {
        List<Verdict> verdicts = history();
        for (boolean split : new boolean[] {true, false}) {
            Map<Source, Double> first = bySource(budget(verdicts.get(0), split));
            first.forEach((source, variance) -> assertTrue(variance <= first.get(Source.CLASS), "at first " + first));
            for (Verdict verdict : verdicts.subList(4, verdicts.size())) {
                double now = budget(verdict, split).variance(Source.CLASS);
                assertTrue(now < 0.05 * first.get(Source.CLASS), verdict.visit().id() + ": " + now + " of " + first.get(Source.CLASS));
            }
        }
    }

    @Test
    void theAnswerNarrowsWithTheFirstVisits() {
        List<Verdict> verdicts = history();
        assertTrue(relative(verdicts.get(2), true) < 0.7 * relative(verdicts.get(0), true));
        assertTrue(relative(verdicts.get(2), false) < 0.7 * relative(verdicts.get(0), false));
    }
}
