package org.longsummer.demo;

import org.longsummer.chain.visit.AirDelivery;

/**
 * What an invented machine shows: linear in the weather with slopes inside the measured ranges (split +0.7 °F per °F of return air,
 * −0.45 per °F of return dew point, −0.075 per °F outdoors; amps +0.95 % per °F outdoors), times what its fault does.
 */
final class ForwardModel {
    private static final double DEW_POINT_AT_RATING = 59.7;
    private static final double DRY_COIL_DEW_POINT = 47;
    private static final double REGISTER_GAIN = 0.8;

    private ForwardModel() {}

    /**
     * Conditions of a reading, °F, %, V.
     *
     * @param returnDryBulb return air
     * @param returnDewPoint its dew point
     * @param ambient air at the condenser
     * @param volts under load
     */
    record Conditions(double returnDryBulb, double returnDewPoint, double ambient, double volts) {}

    /** True split, °F. */
    static double split(Machine machine, Conditions now, Fault fault, double severity) {
        double dewPoint = Math.max(now.returnDewPoint(), DRY_COIL_DEW_POINT);
        double change = 0.7 * (now.returnDryBulb() - 80) - 0.45 * (dewPoint - DEW_POINT_AT_RATING) - 0.075 * (now.ambient() - 95);
        double thinAir = 1 + 0.02 * machine.unit().unit().altitude().feet() / 1000;
        double gain = machine.unit().unit().delivery() == AirDelivery.DUCTED ? REGISTER_GAIN : 0;
        double sound = (machine.splitAtRating() + change) * thinAir - gain;
        double iced = fault == Fault.EVAPORATOR_COIL && severity > 0.95 ? 0.5 : 1;
        return Math.max(3, sound * fault.onSplit(severity) * iced);
    }

    /** True running amps. */
    static double amps(Machine machine, Conditions now, Fault fault, double severity) {
        double wetBulb = Humidity.wetBulb(now.returnDryBulb(), Humidity.percent(now.returnDryBulb(), now.returnDewPoint()));
        double x = now.volts() / 115 - 1;
        return machine.ampsAtRating() * (1 + 0.0095 * (now.ambient() - 95)) * (1 + 0.003 * (wetBulb - 67))
                * (1 - 0.6 * x + 3 * x * x) * fault.onAmps(severity);
    }
}
