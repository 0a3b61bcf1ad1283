package org.longsummer.chain.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Growth;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.season.SeasonClock;

class OutlookerLawTest {
    private static final LocalDate JUNE = LocalDate.of(2021, 6, 10);
    private static final SeasonClock CLOCK = SeasonClock.NORTHERN;
    private static final Outlooker OUTLOOKER = new Outlooker(TypicalFaults.MODEL, LifeCurve.PRIVATE, CLOCK);

    private static Standing standing(Hypothesis... hypotheses) {
        return new Standing(JUNE, List.of(hypotheses), 5, OptionalDouble.of(6), false);
    }

    private static Outlook.Limit limit(Hypothesis... hypotheses) {
        return OUTLOOKER.limit(standing(hypotheses));
    }

    private static Hypothesis fault(double weight, Fault fault, double severity, double rate) {
        return new Hypothesis(weight, fault, severity, rate);
    }

    @Test
    void aCertainFaultReachesTheLimitWhenItsGrowthSays() {
        double atLimit = TypicalFaults.MODEL.effects(Fault.CONDENSER_COIL).severityAtLimit();
        Outlook.Limit limit = limit(fault(1, Fault.CONDENSER_COIL, 0.2, 1.2));
        LocalDate expected = CLOCK.dateAfter(JUNE, (atLimit - 0.2) / 1.2);
        assertEquals(0, ChronoUnit.DAYS.between(expected, limit.p50().orElseThrow()), 2);
        assertTrue(limit.p10().orElseThrow().isBefore(expected) && limit.p90().orElseThrow().isAfter(expected));
        assertEquals(1, limit.withinHorizon(), 1e-12);
    }

    @Test
    void aSoundUnitHasNoLimitDateWithinTheHorizon() {
        Outlook.Limit limit = limit(Hypothesis.sound(1));
        assertTrue(limit.p50().isEmpty() && limit.p90().isEmpty());
        assertTrue(limit.withinHorizon() > 0 && limit.withinHorizon() < 0.5);
        assertEquals(0, limit.ofPresentFault(), 0);
    }

    @Test
    void aThinSuspicionHasAChanceAndNoDate() {
        Outlook.Limit thin = limit(fault(0.15, Fault.CONDENSER_COIL, 0.6, 1.2), Hypothesis.sound(0.85));
        assertTrue(thin.p10().isEmpty() && thin.p50().isEmpty() && thin.p90().isEmpty());
        assertEquals(0.15, thin.ofPresentFault(), 1e-12);
        assertTrue(limit(fault(0.3, Fault.CONDENSER_COIL, 0.6, 1.2), Hypothesis.sound(0.7)).p50().isPresent());
    }

    @Test
    void whatIsPastTheLimitIsThereToday() {
        Outlook.Limit limit = limit(fault(0.6, Fault.CAPACITOR, 1, 0), Hypothesis.sound(0.4));
        assertEquals(JUNE, limit.p50().orElseThrow());
        assertEquals(JUNE, limit.p90().orElseThrow());
        assertEquals(0.6, limit.alreadyPast(), 1e-12);
        assertEquals(0.6, limit.ofPresentFault(), 1e-12);
        assertTrue(limit.withinHorizon() > 0.6);
    }

    @Test
    void aStepThatStaysBelowTheLimitNeverReachesIt() {
        assertEquals(0, limit(fault(1, Fault.CONDENSER_COIL, 0.3, 0)).withinHorizon(), 0);
        assertEquals(0, limit(fault(1, Fault.CONDENSER_COIL, 0, 0)).withinHorizon(), 0);
    }

    @Test
    void worseFasterAndLikelierIsNeverLater() {
        for (Fault fault : Fault.values()) {
            LocalDate before = LocalDate.MAX;
            for (double severity = 0; severity <= 1.2; severity += 0.1) {
                LocalDate now = limit(fault(0.9, fault, severity, 0.9), Hypothesis.sound(0.1)).p50().orElse(LocalDate.MAX);
                assertTrue(!now.isAfter(before), fault + " " + severity);
                LocalDate faster = limit(fault(0.9, fault, severity, 1.8), Hypothesis.sound(0.1)).p50().orElse(LocalDate.MAX);
                assertTrue(!faster.isAfter(now), fault + " " + severity);
                Outlook.Limit likelier = limit(fault(1, fault, severity, 0.9));
                assertTrue(likelier.ofPresentFault() >= limit(fault(0.9, fault, severity, 0.9), Hypothesis.sound(0.1)).ofPresentFault());
                before = now;
            }
        }
    }

    @Test
    void theLimitIsWhereOneOfTheRatiosReachesIt() {
        for (Fault fault : Fault.values()) {
            Effects effects = TypicalFaults.MODEL.effects(fault);
            double severity = effects.severityAtLimit();
            if (severity < Double.POSITIVE_INFINITY) {
                assertEquals(1, effects.shareOfLimit(severity), 1e-9, fault.name());
                assertTrue(effects.shareOfLimit(severity - 0.01) < 1);
            }
        }
        assertEquals(Double.POSITIVE_INFINITY, Effects.NONE.severityAtLimit());
    }

    /** The histogram against drawing the same future a hundred thousand times; a rate is spread over nine points, which shows in so few states. */
    @Test
    void agreesWithDrawingFutures() {
        List<Hypothesis> hypotheses = List.of(Hypothesis.sound(0.5), fault(0.3, Fault.CONDENSER_COIL, 0.3, 0.6),
                fault(0.2, Fault.COMPRESSOR, 0.1, 1.2));
        FirstPassage passage = new FirstPassage.Ahead(TypicalFaults.MODEL, 1.5).of(hypotheses);
        Random random = new Random(11);
        int draws = 100_000;
        double[] present = new double[draws];
        int within = 0;
        int ofPresent = 0;
        for (int i = 0; i < draws; i++) {
            double which = random.nextDouble();
            double time = drawn(which, random);
            within += time < 1.5 ? 1 : 0;
            present[i] = which >= 0.5 ? time : 99;
            ofPresent += present[i] < 1.5 ? 1 : 0;
        }
        Arrays.sort(present);
        assertEquals(within / (double) draws, passage.withinHorizon(), 0.006);
        assertEquals(ofPresent / (double) draws, passage.ofPresentFault(), 0.006);
        for (double share : new double[] {0.1, 0.3, 0.5, 0.7, 0.9}) {
            assertEquals(present[(int) (share * ofPresent)], passage.seasonsUntil(share).orElseThrow(), 0.06, "share " + share);
        }
    }

    private static double drawn(double which, Random random) {
        if (which >= 0.5) {
            boolean condenser = which < 0.8;
            Fault fault = condenser ? Fault.CONDENSER_COIL : Fault.COMPRESSOR;
            double rate = condenser ? 0.6 * Math.exp(0.25 * random.nextGaussian()) : 1.2 * Math.exp(0.6 * random.nextGaussian());
            return (TypicalFaults.MODEL.effects(fault).severityAtLimit() - (condenser ? 0.3 : 0.1)) / rate;
        }
        double onset = -Math.log(1 - random.nextDouble()) / TypicalFaults.MODEL.onsets();
        double pick = random.nextDouble() * TypicalFaults.MODEL.onsets();
        int begun = 0;
        while (pick >= TypicalFaults.MODEL.onsetsPerSeason().get(begun)) {
            pick -= TypicalFaults.MODEL.onsetsPerSeason().get(begun++);
        }
        double way = random.nextDouble();
        int index = 0;
        while (index < TypicalFaults.GROWTH.size() - 1 && way >= TypicalFaults.GROWTH.get(index).share()) {
            way -= TypicalFaults.GROWTH.get(index++).share();
        }
        Growth growth = TypicalFaults.GROWTH.get(index);
        double left = TypicalFaults.MODEL.effects().get(begun).severityAtLimit() - growth.step();
        return left <= 0 ? onset : growth.ratePerSeason() > 0 ? onset + left / growth.ratePerSeason() : Double.POSITIVE_INFINITY;
    }

    @Test
    void withoutHistoryQuittingIsTheLifeCurveAndNoDateIsGiven() {
        Standing unknown = new Standing(JUNE, List.of(), 0, OptionalDouble.of(9), false);
        Outlook outlook = OUTLOOKER.outlook(unknown);
        double seasons = CLOCK.seasonsBetween(JUNE, LocalDate.of(2021, 11, 1));
        assertEquals(LifeCurve.PRIVATE.years().failingWithin(seasons, 9), outlook.quitting().beforeSeasonEnds(), 1e-12);
        assertEquals(Outlook.Basis.AGE_ONLY, outlook.quitting().basis());
        assertTrue(outlook.limit().p10().isEmpty() && outlook.limit().p50().isEmpty());
        Standing ageless = new Standing(JUNE, List.of(), 0, OptionalDouble.empty(), false);
        assertEquals(Outlook.Basis.LIFE_CURVE_ONLY, OUTLOOKER.quitting(ageless).basis());
        assertTrue(OUTLOOKER.fan(unknown).points().isEmpty());
    }

    @Test
    void quittingRisesWithTimeAgeSeverityAndRate() {
        for (Fault fault : Fault.values()) {
            for (double severity = 0; severity < 1.5; severity += 0.25) {
                Outlook.Quitting now = OUTLOOKER.quitting(standing(fault(1, fault, severity, 0.6)));
                Outlook.Quitting worse = OUTLOOKER.quitting(standing(fault(1, fault, severity + 0.1, 0.6)));
                Outlook.Quitting faster = OUTLOOKER.quitting(standing(fault(1, fault, severity, 0.9)));
                Outlook.Quitting older = OUTLOOKER.quitting(
                        new Standing(JUNE, List.of(fault(1, fault, severity, 0.6)), 5, OptionalDouble.of(12), false));
                assertTrue(now.in30Days() < now.beforeSeasonEnds());
                for (Outlook.Quitting other : List.of(worse, faster, older)) {
                    assertTrue(other.beforeSeasonEnds() > now.beforeSeasonEnds() && other.in30Days() > now.in30Days());
                }
            }
        }
    }

    @Test
    void whatWasJudgedSoundQuitsLessThanWhatNobodyJudged() {
        double judged = OUTLOOKER.quitting(standing(Hypothesis.sound(1))).beforeSeasonEnds();
        double unknown = OUTLOOKER.quitting(new Standing(JUNE, List.of(), 0, OptionalDouble.of(6), false)).beforeSeasonEnds();
        assertTrue(judged > 0.15 * unknown && judged < 0.5 * unknown);
    }

    @Test
    void whoOutlivedNineInTenGrowsNoLikelierToQuit() {
        double old = LifeCurve.PRIVATE.years().quantile(0.9);
        assertEquals(LifeCurve.PRIVATE.years().cumulativeHazard(old), LifeCurve.PRIVATE.cumulativeHazard(old), 1e-12);
        assertEquals(QuittingHazard.ofAge(LifeCurve.PRIVATE, old, 1), QuittingHazard.ofAge(LifeCurve.PRIVATE, old + 9, 1), 1e-12);
        assertTrue(QuittingHazard.ofAge(LifeCurve.PRIVATE, old - 3, 1) < QuittingHazard.ofAge(LifeCurve.PRIVATE, old, 1));
    }

    @Test
    void aSoundUnitIsLikelierToQuitOfANewFaultTheLongerOneLooks() {
        NewFaults newFaults = new NewFaults(TypicalFaults.MODEL);
        double before = 0;
        for (double seasons = 0.1; seasons < 3; seasons += 0.1) {
            assertTrue(newFaults.within(seasons) > before);
            before = newFaults.within(seasons);
        }
        assertEquals(0, newFaults.within(0), 0);
    }

    @Test
    void theCumulativeHazardIsTheAreaUnderTheHazard() {
        double area = 0;
        for (int i = 0; i < 200_000; i++) {
            area += QuittingHazard.ofFault(Fault.COMPRESSOR, Math.min(1.6, 0.3 + 0.9 * (i + 0.5) * 1e-5)) * 1e-5;
        }
        assertEquals(area, QuittingHazard.ofFault(Fault.COMPRESSOR, 0.3, 0.9, 2), 1e-9);
    }

    @Test
    void aUnitFoundDeadHasQuit() {
        Outlook outlook = OUTLOOKER.outlook(new Standing(JUNE, List.of(Hypothesis.sound(1)), 3, OptionalDouble.of(6), true));
        assertEquals(1, outlook.quitting().in30Days(), 0);
        assertEquals(JUNE, outlook.limit().p50().orElseThrow());
    }

    @Test
    void theFanStartsAtTodayWidensAndStaysInOrder() {
        Outlook.Fan fan = OUTLOOKER.fan(standing(Hypothesis.sound(0.2), fault(0.4, Fault.CONDENSER_COIL, 0.3, 0.3),
                fault(0.4, Fault.CONDENSER_COIL, 0.4, 1.2)));
        Outlook.FanPoint first = fan.points().get(0);
        Outlook.FanPoint last = fan.points().get(fan.points().size() - 1);
        assertEquals(JUNE, first.on());
        assertTrue(last.shareOfLimit().p90() - last.shareOfLimit().p10() > first.shareOfLimit().p90() - first.shareOfLimit().p10());
        for (Outlook.FanPoint point : fan.points()) {
            assertTrue(point.ampsRatio().p10() <= point.ampsRatio().p50() && point.ampsRatio().p50() <= point.ampsRatio().p90());
            assertTrue(CLOCK.isOpen(point.on()));
        }
    }

    @Test
    void refusesWeightsThatAreNoPosterior() {
        assertThrows(IllegalArgumentException.class, () -> standing(Hypothesis.sound(0.9)));
        assertThrows(IllegalArgumentException.class, () -> fault(0.5, Fault.FILTER, -0.1, 0));
    }
}
