package org.longsummer.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.Verdict;

/**
 * Verdicts on the simulated fleet against its truth, which an independent refrigeration-cycle model made. Limits allow for the noise
 * of one small fleet; beside each stands what an ideal observer has, who knows that model's true spreads and rates.
 */
class FleetCrossCheckTest {
    private static final double FALSE_ALARMS = 0.03;
    private static Scoring scoring;
    private static AcrossWinters winters;

    @BeforeAll
    static void judge() {
        SimulatedFleet fleet = SimulatedFleet.dev();
        Map<String, Verdict> verdicts = fleet.judged();
        scoring = new Scoring(fleet, verdicts);
        winters = AcrossWinters.of(fleet, verdicts);
    }

    private static void atLeast(double limit, double value, String what) {
        assertTrue(value >= limit, () -> what + ": " + value + " is below " + limit);
    }

    private static void atMost(double limit, double value, String what) {
        assertTrue(value <= limit, () -> what + ": " + value + " is above " + limit);
    }

    /** Ideal observer: 1.32 °F and 0.30 A. */
    @Test
    void theExpectationComesNearTheSoundUnit() {
        atMost(1.5, scoring.split().rmsToSoundUnit(), "split to the sound unit, °F");
        atMost(0.34, scoring.amps().rmsToSoundUnit(), "amps to the sound unit");
    }

    /** A normal distribution has 0.954 within two standard deviations. */
    @Test
    void theUncertaintyIsHonest() {
        for (double cover : new double[] {scoring.split().cover(2), scoring.amps().cover(2)}) {
            assertTrue(cover >= 0.92 && cover <= 0.99, () -> "within two standard uncertainties: " + cover);
        }
    }

    /** Ideal observer: 0.87 and 0.003. */
    @Test
    void mistakesAreRetakenAndGoodReadingsAreNot() {
        atLeast(0.84, scoring.grossCaught(), "mistakes caught");
        atMost(0.01, scoring.goodRetaken(), "good readings retaken");
    }

    @Test
    void aUnitWhoseCompressorStandsIsAnAct() {
        assertEquals(1, scoring.notCoolingAct());
    }

    /** Ideal observer: area 0.954, detected 0.80, in time 0.70. */
    @Test
    void impactRanksAboveNoFault() {
        atLeast(0.92, scoring.area(), "area under the curve");
        atLeast(0.70, scoring.detected(FALSE_ALARMS), "detected at 3 % false alarms");
        atLeast(0.48, scoring.crossingsInTime(FALSE_ALARMS), "crossings in time at 3 % false alarms");
    }

    /** Ideal observer: 0.74. */
    @Test
    void whatIsFoundIsNamed() {
        atLeast(0.55, scoring.foundAndNamed(FALSE_ALARMS), "found and named at 3 % false alarms");
    }

    /** Ideal observer: none. */
    @Test
    void nobodyIsSentToASoundUnit() {
        atMost(0.01, scoring.falseAct(), "acts on fault-free visits");
        atMost(0.01, scoring.prematureAct(), "acts where nothing is off by 5 %");
    }

    /** Ideal observer: skill 0.50, reliability error 0.013. */
    @Test
    void probabilitiesMeanWhatTheySay() {
        atLeast(0.38, scoring.brierSkill(), "Brier skill over seven classes");
        atMost(0.05, scoring.reliabilityError(), "reliability error of the probability of none");
    }

    /**
     * 137 winters; the standard error of the share is 0.028. Few are given more than an even chance: in those of whom it is said, most must
     * be past the limit, and few of those of whom it is held unlikely.
     */
    @Test
    void whatIsSaidOfAUnitAcrossTheWinterCameTrueAsOftenAsSaid() {
        assertEquals(winters.past(0, 1.01), winters.said(), 0.06, "past the limit when next visited");
        atLeast(0.6, winters.past(0.5, 1.01), "past the limit of those given more than an even chance");
        atMost(0.08, winters.past(0, 0.1), "past the limit of those given less than one in ten");
    }
}
