package org.longsummer.science.cooling;

/**
 * Running current of a single-phase induction motor under a nearly constant shaft load, against its supply voltage.
 *
 * <p>The load part falls with the voltage, the magnetising part grows with it, steeply near saturation. The parabola is fitted to
 * the published points: +11 % at 90 % and −7 % at 110 % of general motors (classic table, {@code motor-voltage} in
 * {@code reference/sources.md}), and +8.9 %, +3.8 %, −2.1 % at 90, 95, 105 % of single-phase compressors (WECC composite load
 * model, motor D). It has no kink at nominal. Range 0.82 to 1.18; uncertainty 2 % at ±10 %.
 */
public final class MotorVoltage {
    private static final double SLOPE = -0.58;
    private static final double CURVATURE = 3.1;

    private MotorVoltage() {}

    /** @param voltageRatio volts under load over rated volts; held at 0.8 and 1.15 beyond those */
    public static double currentRatio(double voltageRatio) {
        double x = Math.max(0.8, Math.min(1.15, voltageRatio)) - 1;
        return 1 + x * (SLOPE + CURVATURE * x);
    }
}
