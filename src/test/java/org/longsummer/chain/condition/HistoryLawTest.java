package org.longsummer.chain.condition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.VisitSketch;
import org.longsummer.chain.visit.Work;

/** What holds of every history of one unit. Split and amps are those of the bare class, moved by the given logarithms. */
class HistoryLawTest {
    private static final Unit UNIT = VisitSketch.unit("L1");
    private static final LocalDateTime START = LocalDateTime.of(2023, 5, 5, 12, 0);
    /** About so many histories are kept, and one interval's births until they are weighed. */
    private static final int MOST_HISTORIES = 400;

    private static List<Verdict> judge(Unit unit, List<Visit> visits) {
        return Assessment.ofUnit(unit, visits, new Closings());
    }

    private static double none(Verdict verdict) {
        return verdict.probabilities().of(Condition.NONE);
    }

    /** Sound visits every twenty days in changing weather. */
    private static List<Visit> sound(int count) {
        Random random = new Random(5);
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            visits.add(new VisitSketch().at(START.plusDays(20L * i)).ambient(85 + 10 * random.nextDouble())
                    .asExpected(UNIT, 0.04 + 0.03 * random.nextGaussian(), 0.015 * random.nextGaussian()).visit("v" + (1000 + i), UNIT));
        }
        return visits;
    }

    private static VisitSketch next(int count) {
        return new VisitSketch().at(START.plusDays(20L * count));
    }

    /**
     * Along any direction of split and amps, as long as the readings are judged: the further off, the less likely none. Nearest to the
     * expectation the odds against one fault may still win over those of another, by less than a hundredth.
     */
    @Test
    void aLargerDepartureNeverLooksSounder() {
        double[][] directions = {{0, 1}, {0, -1}, {1, 0}, {-1, 0}, {-0.3, 1}, {-1, -0.35}, {1, -0.3}, {1, 1}, {-1, 0.4}, {0.5, -1}};
        for (int count : new int[] {0, 1, 4, 9}) {
            for (double[] direction : directions) {
                double lowest = 2;
                int judged = 0;
                for (double off = 0; off <= 0.5; off += 0.01) {
                    List<Visit> visits = sound(count);
                    visits.add(next(count).asExpected(UNIT, 0.04 + direction[0] * off, direction[1] * off).visit("w", UNIT));
                    Verdict verdict = judge(UNIT, visits).get(count);
                    if (verdict.state() == State.RETAKE) {
                        break;
                    }
                    String where = count + " visits before, off by " + off + " along " + direction[0] + " / " + direction[1];
                    double now = none(verdict);
                    assertTrue(now <= lowest + 0.01, () -> where + ": " + now);
                    lowest = Math.min(lowest, now);
                    judged++;
                }
                assertTrue(judged > 5, "too few were judged");
            }
        }
    }

    /** A visit that shows what was expected moves later expectations by less than their uncertainty, and leaves the unit as sound. */
    @Test
    void aVisitWithoutNewsMovesNothing() {
        List<Visit> visits = sound(7);
        List<Visit> more = new ArrayList<>(visits.subList(0, 6));
        VisitSketch between = new VisitSketch().at(START.plusDays(20 * 5 + 9));
        Visit probe = between.asExpected(UNIT, 0, 0).visit("probe", UNIT);
        more.add(probe);
        Verdict asked = judge(UNIT, more).get(6);
        double lnSplit = Math.log(asked.departure().expectedSplit().orElseThrow().value().kelvins()
                / probe.readings().split().orElseThrow().kelvins());
        double lnAmps = Math.log(asked.departure().expectedAmps().orElseThrow().value().amperes() / probe.readings().amps().orElseThrow().amperes());
        List<Visit> with = new ArrayList<>(visits);
        with.add(between.asExpected(UNIT, lnSplit, lnAmps).visit("news", UNIT));
        Verdict after = judge(UNIT, with).get(7);
        Verdict without = judge(UNIT, visits).get(6);
        double u = without.departure().expectedSplit().orElseThrow().standardUncertainty().kelvins();
        assertEquals(without.departure().expectedSplit().orElseThrow().value().kelvins(),
                after.departure().expectedSplit().orElseThrow().value().kelvins(), 0.1 * u);
        assertTrue(none(after) > none(without) - 0.01, none(without) + " then " + none(after));
    }

    /** Dirt grows until the coil is cleaned and the unit is read again three hours later. Weeks later new dirt may have gathered. */
    private static List<Visit> dirty(Work work, boolean cured) {
        List<Visit> visits = sound(4);
        for (int i = 1; i <= 3; i++) {
            VisitSketch sketch = next(3 + i).asExpected(UNIT, 0.04 - 0.012 * i, 0.045 * i);
            visits.add((i == 3 ? sketch.then(work) : sketch).visit("d" + i, UNIT));
        }
        visits.add(next(6).at(START.plusDays(120).plusHours(3)).asExpected(UNIT, cured ? 0.04 : 0.04 - 0.036, cured ? 0 : 0.135)
                .visit("e", UNIT));
        return visits;
    }

    @Test
    void aCuredFaultsProbabilityFalls() {
        List<Verdict> verdicts = judge(UNIT, dirty(Work.CONDENSER_COIL, true));
        double before = verdicts.get(6).probabilities().of(Condition.CONDENSER_FOULING);
        double after = verdicts.get(7).probabilities().of(Condition.CONDENSER_FOULING);
        assertTrue(before > 0.5, "a condenser that dirties is seen: " + before);
        assertTrue(after < 0.2 * before, before + " then " + after);
        assertTrue(none(verdicts.get(7)) > 0.7, "sound again: " + none(verdicts.get(7)));
    }

    /** Three weeks after the cleaning, showing what it should: the new dirt that is to be expected is no reason to call anybody. */
    @Test
    void aCleanedUnitThatReadsAsItShouldIsSteady() {
        List<Visit> visits = dirty(Work.CONDENSER_COIL, true);
        visits.add(next(7).asExpected(UNIT, 0.04, 0.005).visit("f", UNIT));
        List<Verdict> verdicts = judge(UNIT, visits);
        assertNotEquals(State.STEADY, verdicts.get(6).state());
        verdicts.subList(7, 9).forEach(verdict -> assertEquals(State.STEADY, verdict.state(), verdict.visit().id()));
    }

    /** What survives the cleaning was not dirt. */
    @Test
    void aDepartureThatSurvivesTheCleaningSpeaksAgainstDirt() {
        List<Verdict> verdicts = judge(UNIT, dirty(Work.CONDENSER_COIL, false));
        double before = verdicts.get(6).probabilities().of(Condition.CONDENSER_FOULING);
        double after = verdicts.get(7).probabilities().of(Condition.CONDENSER_FOULING);
        assertTrue(after < 0.2 * before, before + " then " + after);
        assertTrue(none(verdicts.get(7)) < 0.2, "it is the machine: " + none(verdicts.get(7)));
    }

    /** Work on another part cures nothing. */
    @Test
    void anotherPartsCleaningIsNoCure() {
        List<Verdict> verdicts = judge(UNIT, dirty(Work.FILTER, false));
        assertTrue(verdicts.get(7).probabilities().of(Condition.CONDENSER_FOULING) > 0.5);
    }

    @Test
    void aRetakeLeavesNoTrace() {
        List<Visit> visits = sound(9);
        List<Verdict> without = judge(UNIT, visits);
        VisitSketch[] mistakes = {next(0).amps(60), next(0).amps(0.1), next(0).minutes(2), next(0).split(-9), next(0).amps(18.9).split(31)};
        for (int k = 0; k < mistakes.length; k++) {
            List<Visit> with = new ArrayList<>(visits);
            with.add(mistakes[k].at(START.plusDays(20 * 4 + 9)).visit("x" + k, UNIT));
            List<Verdict> verdicts = judge(UNIT, with);
            assertEquals(State.RETAKE, verdicts.get(5).state(), "mistake " + k);
            double allowed = k == 4 ? 0.02 : 0;
            for (int i = 5; i < 9; i++) {
                assertEquals(none(without.get(i)), none(verdicts.get(i + 1)), allowed, "mistake " + k + ", visit " + i);
                assertEquals(without.get(i).departure().expectedSplit().orElseThrow().value().kelvins(),
                        verdicts.get(i + 1).departure().expectedSplit().orElseThrow().value().kelvins(), allowed);
            }
        }
    }

    /** Work done at a visit that is retaken counts all the same. */
    @Test
    void workAfterARetakeCounts() {
        List<Visit> visits = dirty(Work.CONDENSER_COIL, true);
        Visit last = visits.get(6);
        visits.set(6, next(6).amps(60).then(Work.CONDENSER_COIL).visit(last.id(), UNIT));
        assertTrue(judge(UNIT, visits).get(7).probabilities().of(Condition.CONDENSER_FOULING) < 0.2);
    }

    @Test
    void aReplacedUnitStartsAnew() {
        List<Visit> visits = dirty(Work.UNIT_REPLACED, true);
        Verdict afterwards = judge(UNIT, visits).get(7);
        Verdict first = judge(UNIT, List.of(visits.get(7))).get(0);
        assertEquals(none(first), none(afterwards));
        assertEquals(first.departure().expectedSplit(), afterwards.departure().expectedSplit());
        assertEquals(first.departure().expectedAmps(), afterwards.departure().expectedAmps());
        assertNotEquals(none(judge(UNIT, visits).get(6)), none(afterwards));
    }

    @Test
    void probabilitiesAddUpToOne() {
        List<Visit> visits = dirty(Work.CONDENSER_COIL, true);
        for (Verdict verdict : judge(UNIT, visits)) {
            double sum = 0;
            for (Condition condition : Condition.values()) {
                double p = verdict.probabilities().of(condition);
                assertTrue(p >= 0 && p <= 1, condition + ": " + p);
                sum += p;
            }
            assertEquals(1, sum, 1e-12);
            double histories = verdict.hypotheses().stream().mapToDouble(Hypothesis::weight).sum();
            assertEquals(1, histories, 1e-9);
        }
    }

    private static void answered(List<Verdict> verdicts, int count) {
        assertEquals(count, verdicts.size());
        for (Verdict verdict : verdicts) {
            assertTrue(verdict.hypotheses().size() <= MOST_HISTORIES, verdict.hypotheses().size() + " histories");
            assertTrue(none(verdict) >= 0 && none(verdict) <= 1);
            double u = verdict.departure().expectedSplit().orElseThrow().standardUncertainty().fahrenheit();
            assertTrue(u > 0.3 && u < 12, "u " + u);
        }
    }

    @Test
    void twoHundredVisitsAreAnswered() {
        Random random = new Random(9);
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            visits.add(new VisitSketch().at(START.plusDays(3L * i)).ambient(78 + 25 * random.nextDouble())
                    .asExpected(UNIT, 0.03 * random.nextGaussian(), 0.015 * random.nextGaussian()).visit("t" + (1000 + i), UNIT));
        }
        List<Verdict> verdicts = judge(UNIT, visits);
        answered(verdicts, 200);
        assertEquals(State.STEADY, verdicts.get(199).state());
    }

    @Test
    void twentyYearsAndGapsOfYearsAreAnswered() {
        Random random = new Random(10);
        List<Visit> visits = new ArrayList<>();
        LocalDateTime at = LocalDateTime.of(2004, 6, 1, 11, 0);
        for (int i = 0; i < 24; i++) {
            visits.add(new VisitSketch().at(at).ambient(82 + 15 * random.nextDouble())
                    .asExpected(UNIT, 0.03 * random.nextGaussian(), 0.015 * random.nextGaussian()).visit("g" + (1000 + i), UNIT));
            at = at.plusDays(i % 8 == 5 ? 1500 : 90);
        }
        assertTrue(at.getYear() >= 2020);
        answered(judge(UNIT, visits), 24);
    }

    @Test
    void oneVisitOnlyIsAnswered() {
        List<Verdict> verdicts = judge(UNIT, List.of(next(0).asExpected(UNIT, 0.05, 0).visit("one", UNIT)));
        answered(verdicts, 1);
        assertEquals(State.STEADY, verdicts.get(0).state());
    }

    /** A unit first seen with a fault: its class is all there is to compare with, so a large one is suspected and a small one is not. */
    @Test
    void firstSeenOldIsAnswered() {
        Unit old = UNIT.replacedOn(START.toLocalDate().minusYears(19));
        answered(judge(old, List.of(next(0).asExpected(old, 0.05, 0.02).visit("old", old))), 1);
        double usual = none(judge(old, List.of(next(0).asExpected(old, 0.05, 0).visit("usual", old))).get(0));
        double small = none(judge(old, List.of(next(0).asExpected(old, 0.05, 0.05).visit("small", old))).get(0));
        double large = none(judge(old, List.of(next(0).asExpected(old, 0.05, 0.28).visit("large", old))).get(0));
        assertEquals(usual, small, 0.02);
        assertTrue(large < usual - 0.1, usual + " then " + large);
    }

    private static double uncertaintyAfter(double spread) {
        Random random = new Random(12);
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            visits.add(next(i).asExpected(UNIT, 0.04 + spread * 0.07 * random.nextGaussian(), spread * 0.02 * random.nextGaussian())
                    .visit("s" + (1000 + i), UNIT));
        }
        List<Verdict> verdicts = judge(UNIT, visits);
        return verdicts.get(24).departure().expectedAmps().orElseThrow().standardUncertainty().amperes();
    }

    /** A team that reads closely is believed more, one whose readings scatter less. */
    @Test
    void theScatterOfTheReadingsIsLearned() {
        double close = uncertaintyAfter(0.3);
        double usual = uncertaintyAfter(1);
        double wide = uncertaintyAfter(1.8);
        assertTrue(close < 0.85 * usual && usual < 0.9 * wide, close + ", " + usual + ", " + wide);
    }

    /** No visit makes a broken sum: odd but possible readings of every kind. */
    @Test
    void oddReadingsAreAnswered() {
        Random random = new Random(11);
        for (int run = 0; run < 60; run++) {
            List<Visit> visits = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                VisitSketch sketch = new VisitSketch().at(START.plusDays(random.nextInt(900))).ambient(60 + 60 * random.nextDouble())
                        .returnAir(56 + 60 * random.nextDouble(), random.nextInt(5) == 0 ? Double.NaN : 3 + 96 * random.nextDouble())
                        .volts(random.nextInt(4) == 0 ? Double.NaN : 95 + 40 * random.nextDouble()).minutes(1 + 40 * random.nextDouble())
                        .split(-8 + 50 * random.nextDouble()).amps(random.nextInt(4) == 0 ? Double.NaN : 0.1 + 25 * random.nextDouble());
                if (random.nextInt(3) == 0) {
                    sketch.iced().room(60 + 30 * random.nextDouble()).condenserLeaving(70 + 80 * random.nextDouble())
                            .fanOnly(5 * random.nextDouble()).capacitor(80 * random.nextDouble());
                }
                if (random.nextInt(4) == 0) {
                    sketch.then(Work.values()[random.nextInt(Work.values().length)]);
                }
                visits.add(sketch.visit("o" + run + "-" + (1000 + i), UNIT));
            }
            for (Verdict verdict : judge(UNIT, visits)) {
                assertTrue(none(verdict) >= 0 && none(verdict) <= 1, verdict.visit().toString());
                assertTrue(verdict.probabilityOfImpact() >= 0 && verdict.probabilityOfImpact() <= 1, verdict.visit().toString());
                assertTrue(verdict.departure().expectedSplit().orElseThrow().standardUncertainty().kelvins() > 0, verdict.visit().toString());
            }
        }
    }
}
