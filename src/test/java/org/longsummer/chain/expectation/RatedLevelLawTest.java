package org.longsummer.chain.expectation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Voltage;
import org.longsummer.science.uncertainty.Uncertain;

/** Amps by size and volts, and what a plate adds to it. */
class RatedLevelLawTest {
    private static final double SIZE = 13_500;

    private static Uncertain level(double btuh, double volts, double amps, AmpsKind kind) {
        return RatedLevel.lnAmps(new Plate(btuh > 0 ? Optional.of(CoolingCapacity.btuPerHour(btuh)) : Optional.empty(), Optional.empty(),
                amps > 0 ? Optional.of(new Current(amps)) : Optional.empty(), kind, Optional.of(new Voltage(volts)), false, false, Optional.empty()));
    }

    private static double amps(double btuh, double volts) {
        return Math.exp(level(btuh, volts, 0, AmpsKind.UNKNOWN).value());
    }

    @Test
    void twiceTheCapacityDrawsTwiceAndTwiceTheVoltsHalf() {
        assertEquals(2 * amps(SIZE, 115), amps(2 * SIZE, 115), 1e-9);
        assertEquals(amps(SIZE, 115) / 2, amps(SIZE, 230), 1e-9);
        assertEquals(amps(SIZE, 115), Math.exp(RatedLevel.lnAmps(Plate.UNREAD).value()), 1e-9, "a plate that nobody read: the usual size and volts");
    }

    @Test
    void aPlateIsAWitnessMore() {
        Uncertain alone = level(SIZE, 115, 0, AmpsKind.UNKNOWN);
        assertTrue(level(0, 115, 0, AmpsKind.UNKNOWN).standardUncertainty() > alone.standardUncertainty(), "without its size less is known");
        for (AmpsKind kind : AmpsKind.values()) {
            Uncertain less = level(SIZE, 115, 10, kind);
            Uncertain more = level(SIZE, 115, 16, kind);
            assertTrue(less.value() < alone.value() && alone.value() < more.value(), kind.toString());
            assertTrue(less.standardUncertainty() < alone.standardUncertainty(), kind.toString());
            double pull = (more.value() - less.value()) / Math.log(1.6);
            double variance = alone.standardUncertainty() * alone.standardUncertainty();
            assertEquals(1 - less.standardUncertainty() * less.standardUncertainty() / variance, pull, 1e-9, "by inverse variance: " + kind);
        }
    }

    /** Practice: running amps at the rating point say most; those of the compressor with its fan are a ceiling; of what is not said one knows least. */
    @Test
    void whatTheFigureMeansMatters() {
        double input = level(SIZE, 115, 12, AmpsKind.INPUT).standardUncertainty();
        double compressor = level(SIZE, 115, 12, AmpsKind.RLA).standardUncertainty();
        assertTrue(input < compressor);
        assertEquals(compressor, level(SIZE, 115, 12, AmpsKind.RLA_PLUS_FAN).standardUncertainty(), 0);
        assertTrue(compressor < level(SIZE, 115, 12, AmpsKind.UNKNOWN).standardUncertainty());
        assertTrue(level(SIZE, 115, 14, AmpsKind.RLA_PLUS_FAN).value() < level(SIZE, 115, 14, AmpsKind.RLA).value());
    }
}
