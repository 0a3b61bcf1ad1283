package org.longsummer.chain.condition;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.VisitSketch;
import org.longsummer.chain.visit.Work;
import org.longsummer.evidence.Comparison;

/** The mixture step by step against {@link NaiveMixture}, which never drops a history. */
class MixtureCrossCheckTest {
    private static final Unit UNIT = VisitSketch.unit("N1");
    /** With few histories only those are dropped that are a hundred thousand times less likely than the best. */
    private static final double DROPPED_FEW = 5e-4;
    /** Later some 150 of 600 are kept: what the least likely would have come to. */
    private static final double DROPPED_MANY = 0.04;

    /** Sound, a dirtying condenser that is cleaned, a unit that loses capacity, one with side readings and gaps. */
    private static List<Visit> history(int kind, int count) {
        Random random = new Random(100 + kind);
        List<Visit> visits = new ArrayList<>();
        LocalDateTime at = LocalDateTime.of(2022, 5, 10, 10, 0);
        double dirt = 0;
        for (int i = 0; i < count; i++) {
            double lnSplit = 0.04 + 0.04 * random.nextGaussian() - (kind == 1 ? 0.04 * dirt : kind == 2 ? 0.02 * i : 0);
            double lnAmps = 0.015 * random.nextGaussian() + (kind == 1 ? 0.14 * dirt : kind == 2 ? -0.008 * i : 0);
            VisitSketch sketch = new VisitSketch().at(at).returnAir(74 + 6 * random.nextDouble(), 40 + 20 * random.nextDouble())
                    .ambient(80 + 20 * random.nextDouble()).by(i % 3 == 0 ? "Ada" : "Ben").asExpected(UNIT, lnSplit, lnAmps);
            if (i % 2 == 1) {
                sketch.filter(kind == 2 ? FilterLook.DIRTY : FilterLook.CLEAN).coil(dirt > 0.5 ? CoilLook.HEAVY : CoilLook.CLEAN);
            }
            if (kind == 3) {
                sketch.fanOnly(2.1 + 0.1 * random.nextGaussian()).condenserLeaving(112 + 3 * random.nextGaussian()).capacitor(i < 5 ? 45 : 38)
                        .room(78);
            }
            if (kind == 1 && i == 4) {
                sketch.then(Work.CONDENSER_COIL);
                dirt = -0.25;
            }
            dirt += 0.25;
            visits.add(sketch.visit("n" + (100 + i), UNIT));
            at = at.plusDays(kind == 3 && i == 2 ? 400 : i == 1 ? 0 : 17).plusHours(i == 1 ? 3 : 0);
        }
        return visits;
    }

    private void compare(int count, String what, double allowed) {
        try (Comparison probabilities = Comparison.absolute(getClass(), "probabilities of the conditions, " + what, "", "brute-force", allowed);
                Comparison impact = Comparison.absolute(getClass(), "probability of impact, " + what, "", "brute-force", allowed);
                Comparison expected = Comparison.relative(getClass(), "expected split and amps, " + what, "brute-force", allowed)) {
            for (int kind = 0; kind < 4; kind++) {
                History history = new History(UNIT, false);
                NaiveMixture naive = new NaiveMixture(UNIT);
                for (Visit visit : history(kind, count)) {
                    Verdict verdict = history.judge(visit, new Closings());
                    naive.judge(visit);
                    String where = "history " + kind + ", visit " + visit.id() + ", " + naive.size() + " histories";
                    naive.probabilities().forEach((condition, p) -> probabilities.point(where + ", " + condition,
                            verdict.probabilities().of(condition), p));
                    impact.point(where, verdict.probabilityOfImpact(), naive.impact());
                    expected.point(where + ", split", verdict.departure().expectedSplit().orElseThrow().value().kelvins(),
                            naive.expectedSplitKelvins());
                    expected.point(where + ", amps", verdict.departure().expectedAmps().orElseThrow().value().amperes(), naive.expectedAmps());
                    history.workDone(visit);
                    naive.workDone(visit.workDone());
                }
            }
        }
    }

    @Test
    void theFirstVisits() {
        compare(2, "two visits", DROPPED_FEW);
    }

    @Test
    void aLongHistory() {
        compare(9, "nine visits", DROPPED_MANY);
    }
}
