package org.longsummer.chain.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Voltage;

/** What amps can be, from size, volts and what is printed; each kind of mistake has its own span, and the spans leave no gap. */
class RunningAmpsLawTest {
    private static final double NOT_PRINTED = 0;

    private static RunningAmps amps(double btuh, double volts, double printed) {
        return RunningAmps.of(new Plate(Optional.of(CoolingCapacity.btuPerHour(btuh)), Optional.empty(),
                printed > 0 ? Optional.of(new Current(printed)) : Optional.empty(), AmpsKind.UNKNOWN, Optional.of(new Voltage(volts)), false, false, Optional.empty()));
    }

    @Test
    void largerUnitsDrawMoreAndTwiceTheVoltsHalveIt() {
        RunningAmps usual = amps(13_500, 115, NOT_PRINTED);
        assertEquals(12, usual.usualLeast(), 1e-9, "practice: 12 A of a 13,500 Btu/h unit");
        assertEquals(12, usual.usualMost(), 1e-9);
        assertEquals(16, amps(18_000, 115, NOT_PRINTED).usualMost(), 1e-9);
        RunningAmps twice = amps(13_500, 230, NOT_PRINTED);
        assertEquals(6, twice.usualMost(), 1e-9);
        assertEquals(usual.nothing() / 2, twice.nothing(), 1e-9);
        assertEquals(usual.fansAlone() / 2, twice.fansAlone(), 1e-9);
    }

    /** A size that no roof unit has, or volts that no mains have, are taken as not read: any usual unit is thought possible. */
    @Test
    void whatIsNoPlateOfARoofUnitIsNotBelieved() {
        RunningAmps unread = RunningAmps.of(Plate.UNREAD);
        assertTrue(unread.usualLeast() < unread.usualMost());
        assertEquals(unread, amps(8_999, 115, NOT_PRINTED));
        assertEquals(unread, amps(18_001, 115, NOT_PRINTED));
        assertEquals(8, amps(9_000, 115, NOT_PRINTED).usualMost(), 1e-9, "the smallest is one");
        for (double volts : new double[] {89, 481, 12}) {
            assertEquals(amps(13_500, 115, NOT_PRINTED), amps(13_500, volts, NOT_PRINTED), volts + " V");
        }
        assertEquals(12 * 115 / 90.0, amps(13_500, 90, NOT_PRINTED).usualMost(), 1e-9);
        assertEquals(12 * 115 / 480.0, amps(13_500, 480, NOT_PRINTED).usualMost(), 1e-9);
    }

    /** What is printed above all of that size tells of a larger machine; twice as much is a slip of whoever typed it. */
    @Test
    void aPlateBeyondItsSizeIsOfALargerMachine() {
        for (double printed : new double[] {11, 14, 16.2, 24, 30, 120}) {
            assertEquals(12, amps(13_500, 115, printed).usualMost(), 1e-9, printed + " A");
        }
        for (double printed : new double[] {16.3, 20, 23.9}) {
            RunningAmps larger = amps(13_500, 115, printed);
            assertEquals(printed, larger.usualMost(), 1e-9);
            assertEquals(12, larger.usualLeast(), 1e-9);
        }
    }

    private static Object mistake(double amperes) {
        return amps(13_500, 115, NOT_PRINTED).mistake(amperes, false).map(Object.class::cast).orElse("none");
    }

    @Test
    void everySpanOfAmpsHasItsMistake() {
        RunningAmps usual = amps(13_500, 115, NOT_PRINTED);
        assertEquals(Mistake.CLAMP_AROUND_BOTH, mistake(usual.nothing() - 1e-9));
        assertEquals(Mistake.DECIMAL_SLIP, mistake(usual.nothing()));
        assertEquals(Mistake.DECIMAL_SLIP, mistake(1.21));
        assertEquals(Mistake.IMPOSSIBLE, mistake(2.5), "ten times that is no usual unit either");
        assertEquals("none", mistake(usual.least()));
        assertEquals("none", mistake(usual.most()));
        assertEquals(Mistake.CLAMP_AROUND_CORD, mistake(usual.most() + 1e-9));
        assertEquals(Mistake.CLAMP_AROUND_CORD, mistake(2.5 * 12));
        assertEquals(Mistake.HOLD_LEFT_ON, mistake(2.5 * 12 + 1e-9));
        assertEquals(Mistake.HOLD_LEFT_ON, mistake(7 * 12));
        assertEquals(Mistake.TEN_TURNS, mistake(121));
        assertEquals(Mistake.DECIMAL_SLIP, mistake(1_210));
        assertEquals(Mistake.IMPOSSIBLE, mistake(12_100));
        assertTrue(usual.mistake(2, true).isEmpty(), "a variable-speed compressor may draw that little");
    }
}
