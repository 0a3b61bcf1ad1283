package org.longsummer.chain.condition;

import java.util.ArrayList;
import java.util.List;

/**
 * One way in which a new fault grows.
 *
 * @param share how many of the new faults take it
 * @param step severity at once
 * @param ratePerSeason growth per season of running after that
 */
public record Growth(double share, double step, double ratePerSeason) {

    /** The ways that the lattice of histories follows; shares add up to 1. */
    public static List<Growth> ways() {
        List<Growth> ways = new ArrayList<>();
        for (int i = 0; i < Lattice.RATES.length; i++) {
            ways.add(new Growth((1 - Lattice.STEP_SHARE) * Lattice.RATE_SHARES[i], 0, Lattice.RATES[i]));
        }
        for (double step : Lattice.STEPS) {
            ways.add(new Growth(Lattice.STEP_SHARE / Lattice.STEPS.length, step, 0));
        }
        return ways;
    }
}
