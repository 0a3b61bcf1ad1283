package org.longsummer.chain.outlook;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.condition.Growth;

/** A fault model for tests: magnitudes of common practice at severity 1, straight in the logarithm. Not a reference for anything. */
public final class TypicalFaults {
    /** Three quarters grow, at four rates; a quarter comes as a step. */
    public static final List<Growth> GROWTH = List.of(new Growth(0.1875, 0, 0.3), new Growth(0.2625, 0, 0.6),
            new Growth(0.225, 0, 1.2), new Growth(0.075, 0, 2.4), new Growth(0.0625, 0.35, 0),
            new Growth(0.0625, 0.7, 0), new Growth(0.0625, 1.1, 0), new Growth(0.0625, 1.6, 0));

    public static final FaultModel MODEL = new FaultModel(effects(), List.of(0.08, 0.05, 0.05, 0.04, 0.045, 0.035, 0.02, 0.02), GROWTH);

    private TypicalFaults() {}

    private static List<Effects> effects() {
        List<Effects> effects = new ArrayList<>();
        effects.add(exponential(-0.08, -0.12, 0.15));
        effects.add(exponential(0.12, -0.14, -0.03));
        effects.add(exponential(0.12, -0.14, -0.03));
        effects.add(exponential(-0.18, -0.21, -0.07));
        effects.add(exponential(-0.15, -0.17, -0.055));
        effects.add(exponential(-0.02, -0.03, 0.16));
        effects.add(exponential(-0.075, -0.125, -0.0075));
        effects.add(exponential(0.03, -0.14, 0.10));
        return effects;
    }

    private static Effects exponential(double split, double capacity, double amps) {
        return Effects.of(s -> Math.exp(split * s), s -> Math.exp(capacity * s), s -> Math.exp(amps * s));
    }
}
