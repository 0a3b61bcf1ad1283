package org.longsummer.chain.departure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.chain.expectation.Expecter;
import org.longsummer.chain.expectation.UsualVolts;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Known;
import org.longsummer.chain.screening.Screener;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.VisitSketch;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Voltage;

/** What a visit's readings say against the expectation, by what a logarithm of a ratio must be. */
class ObservationLawTest {
    private static final Unit UNIT = VisitSketch.unit("O1");
    private static final int SPLIT = Channel.SPLIT.ordinal();
    private static final int AMPS = Channel.AMPS.ordinal();
    private static final int RISE = Channel.CONDENSER_RISE.ordinal();
    private static final int FAN = Channel.FAN_ONLY.ordinal();

    private static Expectation expectation(Unit unit, VisitSketch sketch) {
        return Expecter.expect(Screener.screen(unit, sketch.visit("o", unit)), new Closings(), UsualVolts.UNKNOWN);
    }

    private static Observation observe(Unit unit, VisitSketch sketch) {
        Visit visit = sketch.visit("o", unit);
        return Observation.of(expectation(unit, sketch), Known.before(new Closings(), unit, visit));
    }

    private static Unit sized(double btuh, double volts) {
        return new Unit("O2", "O2", "Alder Yard", new Plate(Optional.of(CoolingCapacity.btuPerHour(btuh)), Optional.empty(), Optional.empty(), AmpsKind.UNKNOWN,
                Optional.of(new Voltage(volts)), false, false, Optional.empty()), AirDelivery.NON_DUCTED, Optional.empty(), Altitude.SEA_LEVEL);
    }

    @Test
    void whatIsAsExpectedDepartsByNothingAndTheRestByItsLogarithm() {
        for (double ln : new double[] {0, 0.1, -0.2}) {
            Observation seen = observe(UNIT, new VisitSketch().asExpected(UNIT, ln, -ln / 2));
            assertEquals(ln, seen.values()[SPLIT], 1e-9);
            assertEquals(-ln / 2, seen.values()[AMPS], 1e-9);
        }
    }

    @Test
    void onlyWhatWasReadIsThere() {
        assertArrayEquals(new int[] {SPLIT, AMPS}, observe(UNIT, new VisitSketch()).made());
        assertArrayEquals(new int[] {AMPS}, observe(UNIT, new VisitSketch().split(VisitSketch.NOT_READ)).made());
        assertArrayEquals(new int[] {SPLIT}, observe(UNIT, new VisitSketch().amps(VisitSketch.NOT_READ)).made());
        assertArrayEquals(new int[] {SPLIT, AMPS, RISE, FAN}, observe(UNIT, new VisitSketch().condenserLeaving(108).fanOnly(2.2)).made());
        assertArrayEquals(new int[] {}, observe(UNIT, new VisitSketch().split(VisitSketch.NOT_READ).amps(VisitSketch.NOT_READ)).made());
    }

    /** The rise over the air that enters; a rise of nearly nothing or beyond all units is no reading of it. */
    @Test
    void theRiseIsThatOverTheEnteringAir() {
        double at16 = observe(UNIT, new VisitSketch().ambient(92).condenserLeaving(108)).values()[RISE];
        double at24 = observe(UNIT, new VisitSketch().ambient(92).condenserLeaving(116)).values()[RISE];
        assertEquals(Math.log(24 / 16.0), at24 - at16, 1e-9);
        for (double leaving : new double[] {92, 93, 92 + 73}) {
            assertFalse(observe(UNIT, new VisitSketch().ambient(92).condenserLeaving(leaving)).present()[RISE], leaving + " °F");
        }
    }

    /** A hotter day: less capacity and more power; the rise follows the heat of both, of which the room's is the larger part. */
    @Test
    void theExpectedRiseIsThatOfTheHeatRejected() {
        Expectation mild = expectation(UNIT, new VisitSketch().ambient(75));
        Expectation hot = expectation(UNIT, new VisitSketch().ambient(105));
        double rise = observe(UNIT, new VisitSketch().ambient(105)).lnExpected()[RISE] - observe(UNIT, new VisitSketch().ambient(75)).lnExpected()[RISE];
        double byCapacity = Math.log(hot.machine().sound().capacityRatio() / mild.machine().sound().capacityRatio());
        double byPower = Math.log(hot.machine().sound().powerRatio() / mild.machine().sound().powerRatio());
        assertTrue(byCapacity < rise && rise < byPower && rise - byCapacity < byPower - rise, byCapacity + " " + rise + " " + byPower);
    }

    /** Larger motors in a larger unit, by the root of its size; half the amps at twice the volts. */
    @Test
    void fanOnlyAmpsFollowSizeAndVolts() {
        double usual = observe(sized(13_500, 115), new VisitSketch()).lnExpected()[FAN];
        assertEquals(Math.log(2) / 2, observe(sized(27_000, 115), new VisitSketch()).lnExpected()[FAN] - usual, 1e-9);
        assertEquals(-Math.log(2), observe(sized(13_500, 230), new VisitSketch().volts(230)).lnExpected()[FAN] - usual, 1e-9);
        assertEquals(0, observe(UNIT, new VisitSketch().fanOnly(2.1)).values()[FAN], 1e-9, "practice: a 13,500 Btu/h unit's fans draw 2.1 A");
    }

    /** A reading's own error: symmetric, no more together than each alone, and no more of the model in it than nothing. */
    @Test
    void theNoiseIsThatOfTheMeasurement() {
        for (VisitSketch sketch : List.of(new VisitSketch(), new VisitSketch().volts(VisitSketch.NOT_READ), new VisitSketch().ambient(VisitSketch.NOT_READ))) {
            double[][] noise = observe(UNIT, sketch).noise();
            double[] all = expectation(UNIT, sketch).covariance();
            assertEquals(noise[SPLIT][AMPS], noise[AMPS][SPLIT], 0);
            assertTrue(Math.abs(noise[SPLIT][AMPS]) < Math.sqrt(noise[SPLIT][SPLIT] * noise[AMPS][AMPS]));
            assertTrue(noise[SPLIT][SPLIT] > 0 && noise[SPLIT][SPLIT] < all[0] && noise[AMPS][AMPS] > 0 && noise[AMPS][AMPS] < all[2]);
            assertEquals(all[1], noise[SPLIT][AMPS], 1e-12, "the model's errors are of split or of amps, never of both");
        }
        double read = observe(UNIT, new VisitSketch()).noise()[RISE][RISE];
        assertTrue(observe(UNIT, new VisitSketch().ambient(VisitSketch.NOT_READ)).noise()[RISE][RISE] > 5 * read, "a rise over unread air says little");
    }

    @Test
    void aFilterAgesWithRunningAndIsNewAgainWhenChanged() {
        FilterAge changed = FilterAge.UNKNOWN.after(Set.of(Work.FILTER));
        assertEquals(new FilterAge(0, true), changed);
        assertEquals(FilterAge.UNKNOWN, FilterAge.UNKNOWN.after(Set.of(Work.CONDENSER_COIL)), "other work does nothing to it");
        FilterAge old = changed.older(0.5).older(0.7);
        assertEquals(1.2, old.seasons(), 1e-12);
        assertTrue(old.known());
        for (FilterAge age : List.of(old, FilterAge.UNKNOWN)) {
            assertTrue(age.lnSplit() > 0 && age.lnAmps() < 0 && age.lnCapacity() < 0, "less air: a larger split, less capacity and fewer amps");
            assertEquals(2 * age.lnSplit(), new FilterAge(age.seasons() / 2, true).lnSplit() * 4, 1e-12, "in proportion");
        }
        assertEquals(0, changed.lnSplit() + changed.lnAmps() + changed.lnCapacity(), 0);
        assertEquals(changed.older(1.5).lnSplit(), changed.older(9).lnSplit(), 0, "full is full");
        assertEquals(changed.older(1.5).lnAmps(), changed.older(9).lnAmps(), 0);
        assertEquals(changed.older(1.5).lnCapacity(), changed.older(9).lnCapacity(), 0);
    }

    @Test
    void summersFallWhereAUnitIsChecked() {
        for (int month = 1; month <= 12; month++) {
            Visit visit = new VisitSketch().at(LocalDateTime.of(2025, month, 15, 12, 0)).visit("h", UNIT);
            Hemisphere seen = Hemisphere.of(List.of(visit, visit));
            boolean northern = month >= 5 && month <= 9;
            boolean southern = month >= 11 || month <= 3;
            assertEquals(new Hemisphere(northern ? 2 : 0, southern ? 2 : 0), seen, "month " + month);
            double july = seen.clock(UNIT).seasonsBetween(java.time.LocalDate.of(2025, 7, 1), java.time.LocalDate.of(2025, 8, 1));
            double january = seen.clock(UNIT).seasonsBetween(java.time.LocalDate.of(2025, 1, 1), java.time.LocalDate.of(2025, 2, 1));
            assertEquals(southern, january > july, "month " + month);
        }
    }
}
