package org.longsummer.science.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What is said of single-phase compressors without a source at hand; each number with its width. */
class MotorVoltagePracticeTest {
    /** [wecc-motor-d], its parameters from memory: 8.9, 3.8 and −2.1 % at 90, 95 and 105 %; a point either way. */
    @Test
    void nearTheCompressorsOfAPowerSystemModel() {
        assertEquals(1.089, MotorVoltage.currentRatio(0.90), 0.010);
        assertEquals(1.038, MotorVoltage.currentRatio(0.95), 0.010);
        assertEquals(0.979, MotorVoltage.currentRatio(1.05), 0.010);
    }

    /** Practice: about −0.75 % of amps for +1 % of volts well below nominal, −0.6 near it, flattening above. */
    @Test
    void fallsMoreSlowlyTheHigherTheVolts() {
        double below = slope(0.92);
        double near = slope(0.99);
        double above = slope(1.08);
        assertTrue(below < near && near < above, below + ", " + near + ", " + above);
        assertEquals(-0.6, near, 0.1);
        assertTrue(below < -0.7 && below > -1.2, "below nominal " + below);
        assertTrue(Math.abs(above) < 0.25, "above nominal " + above);
    }

    private static double slope(double volts) {
        return (MotorVoltage.currentRatio(volts + 0.005) - MotorVoltage.currentRatio(volts - 0.005)) / 0.01;
    }
}
