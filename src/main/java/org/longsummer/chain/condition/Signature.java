package org.longsummer.chain.condition;

import org.longsummer.chain.departure.Channel;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.cooling.RoofUnit;

/**
 * What one fault does to each channel and to capacity in the conditions of one visit, as ln ratios to the sound unit: a cubic in
 * severity through zero and the physics at three severities.
 */
final class Signature {
    private static final int CAPACITY = Channel.COUNT;
    private static final double MOST = 1.6;
    private static final double ROOM_SHARE = 0.76;

    private final double[][] coefficients = new double[Channel.COUNT + 1][3];

    private Signature() {}

    static Signature of(Fault fault, RoofUnit machine, Temperature condenserAir) {
        double[] half = at(fault, 0.5, machine, condenserAir);
        double[] one = at(fault, 1, machine, condenserAir);
        double[] more = at(fault, 1.5, machine, condenserAir);
        Signature signature = new Signature();
        for (int c = 0; c <= CAPACITY; c++) {
            double g1 = half[c] / 0.5;
            double g2 = one[c];
            double g3 = more[c] / 1.5;
            double quadratic = 2 * (g3 - 2 * g2 + g1);
            double linear = (g2 - g1) / 0.5 - 1.5 * quadratic;
            signature.coefficients[c][0] = g1 - 0.5 * linear - 0.25 * quadratic;
            signature.coefficients[c][1] = linear;
            signature.coefficients[c][2] = quadratic;
        }
        return signature;
    }

    private static double[] at(Fault fault, double s, RoofUnit machine, Temperature condenserAir) {
        RoofUnit.Response sound = machine.sound();
        RoofUnit.Response faulty = machine.respond(fault.alteration(s, machine, condenserAir));
        double[] ln = new double[Channel.COUNT + 1];
        ln[Channel.SPLIT.ordinal()] = Math.log(faulty.split().kelvins() / sound.split().kelvins()) + fault.extraLnSplit(s);
        ln[Channel.AMPS.ordinal()] = Math.log(faulty.powerRatio() / sound.powerRatio()) + fault.extraLnAmps(s);
        ln[Channel.FAN_ONLY.ordinal()] = fault.extraLnFanOnly(s);
        ln[CAPACITY] = Math.log(faulty.capacityRatio() / sound.capacityRatio()) + fault.extraLnCapacity(s);
        ln[Channel.CONDENSER_RISE.ordinal()] = Math.log(heat(faulty) / heat(sound) / fault.condenserFlow(s));
        return ln;
    }

    private static double heat(RoofUnit.Response response) {
        return ROOM_SHARE * response.capacityRatio() + (1 - ROOM_SHARE) * response.powerRatio();
    }

    double onChannel(int channel, double severity) {
        return cubic(coefficients[channel], severity);
    }

    double lnCapacity(double severity) {
        return cubic(coefficients[CAPACITY], severity);
    }

    private static double cubic(double[] c, double severity) {
        double s = Math.min(severity, MOST);
        return s * (c[0] + s * (c[1] + s * c[2]));
    }
}
