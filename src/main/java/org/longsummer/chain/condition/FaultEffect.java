package org.longsummer.chain.condition;

import org.longsummer.chain.departure.Channel;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.cooling.RoofUnit;

/**
 * What a fault of any severity does to a unit in given weather, as ratios to the same unit sound.
 */
public final class FaultEffect {
    private final Signature signature;

    private FaultEffect(Signature signature) {
        this.signature = signature;
    }

    /** In the weather of a sound unit. */
    public static FaultEffect of(Fault fault, RoofUnit sound, Temperature condenserAir) {
        return new FaultEffect(Signature.of(fault, sound, condenserAir));
    }

    public double splitRatio(double severity) {
        return Math.exp(signature.onChannel(Channel.SPLIT.ordinal(), severity));
    }

    public double ampsRatio(double severity) {
        return Math.exp(signature.onChannel(Channel.AMPS.ordinal(), severity));
    }

    public double capacityRatio(double severity) {
        return Math.exp(signature.lnCapacity(severity));
    }
}
