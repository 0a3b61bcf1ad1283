package org.longsummer.science.cooling;

import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.science.moistair.MoistAir;

/**
 * A roof air conditioner's split, capacity and power against the rating point, in given air, sound or altered by a fault.
 *
 * <p>Capacity and power move with return wet bulb and condenser air like the window unit of {@link WinklerEtAl2013}; the split
 * follows through a {@link BypassFactorCoil} calibrated at the rating point to the split that roof units show there (20 °F: makers'
 * statements and service texts, {@code split-rated} in {@code reference/sources.md}), since nominal capacity and air flow do not
 * give it. The blower moves a constant volume, so the mass flow falls with altitude and heat; it is counted at the return.
 */
public final class RoofUnit {
    /** Common practice; makers' statements go from 10 to 20 °F, service texts 17 to 20 °F. */
    public static final TemperatureDifference RATED_SPLIT = TemperatureDifference.fahrenheit(20);
    /** Common practice for room units. */
    private static final double RATED_SENSIBLE_HEAT_RATIO = 0.70;
    /** Capacity against air flow, wet coil; between the published 0.11 (window unit), 0.20 (terminal unit) and 0.39 (Cheung and Braun). */
    private static final double FLOW_EXPONENT_WET = 0.28;
    /** A dry coil loses more of its capacity with its air flow. */
    private static final double FLOW_EXPONENT_DRY = 0.55;
    /** Power against wet bulb, 1/K: 0.003 per °F; the window unit's own curve has an unphysical minimum near 64 °F wet bulb. */
    private static final double POWER_PER_WET_BULB = 0.0054;
    /** Amps follow capacity where the evaporator alone changes. */
    private static final double AMPS_FOLLOW_CAPACITY = 0.2;

    private static final BypassFactorCoil COIL =
            BypassFactorCoil.ratedAt(RatingPoint.RETURN_AIR, RATED_SPLIT, RATED_SENSIBLE_HEAT_RATIO);
    private static final double RATED_CAPACITY_CURVE =
            WinklerEtAl2013.capacityRatio(RatingPoint.RETURN_WET_BULB, RatingPoint.OUTDOOR);
    private static final double RATED_POWER_CURVE = WinklerEtAl2013.powerRatio(RatingPoint.RETURN_WET_BULB, RatingPoint.OUTDOOR);
    private static final int MOST_STEPS = 40;

    private final MoistAir air;
    private final Temperature dewPoint;
    private final Temperature airWetBulb;
    private final double massFlowRatio;
    private final Temperature condenserAir;
    private final Temperature wetBulb;
    private final Response sound;

    /** @param returnAir air entering the evaporator
     *  @param condenserAir air entering the condenser */
    public RoofUnit(MoistAir returnAir, Temperature condenserAir) {
        this(returnAir, returnAir.dewPoint(), returnAir.wetBulb(), condenserAir);
    }

    private RoofUnit(MoistAir returnAir, Temperature dewPoint, Temperature airWetBulb, Temperature condenserAir) {
        this.air = returnAir;
        this.dewPoint = dewPoint;
        this.airWetBulb = airWetBulb;
        this.condenserAir = condenserAir;
        this.massFlowRatio = RatingPoint.RETURN_AIR.specificVolume() / returnAir.specificVolume();
        this.wetBulb = effectiveWetBulb();
        this.sound = answer(Alteration.NONE);
    }

    /** The same unit in the same return air with other air at the condenser. */
    public RoofUnit withCondenserAir(Temperature other) {
        return new RoofUnit(air, dewPoint, airWetBulb, other);
    }

    /** What the sound unit does. */
    public Response sound() {
        return sound;
    }

    /** Of the air entering the evaporator. */
    public Temperature returnDewPoint() {
        return dewPoint;
    }

    /** The wet bulb at which the curves are read: the air's own, or for a dry coil the one at which it just goes dry. */
    public Temperature wetBulb() {
        return wetBulb;
    }

    /** What the altered unit does. */
    public Response respond(Alteration alteration) {
        return alteration.equals(Alteration.NONE) ? sound : answer(alteration);
    }

    private Response answer(Alteration alteration) {
        Temperature outdoor = new Temperature(condenserAir.kelvins() + alteration.condenserRise());
        double exponent = FLOW_EXPONENT_WET + (FLOW_EXPONENT_DRY - FLOW_EXPONENT_WET) * dryness();
        double flowEffect = alteration.flowRatio() == 1 ? 1 : Math.pow(alteration.flowRatio(), exponent);
        double capacity = capacityAt(wetBulb, outdoor) * flowEffect * alteration.capacityRatio();
        double mass = massFlowRatio * alteration.flowRatio();
        BypassFactorCoil.Leaving leaving =
                BypassFactorCoil.leaving(air, COIL.ratedEnthalpyDrop() * capacity / mass, COIL.bypassFactor(mass));
        double power = powerAt(outdoor) * alteration.ampsRatio()
                * (flowEffect == 1 ? 1 : Math.pow(flowEffect, AMPS_FOLLOW_CAPACITY));
        return new Response(leaving.split(), leaving.apparatusDewPoint(), leaving.dry(), capacity, power);
    }

    /** 0 for a coil that takes out much water, 1 for a dry one. */
    private double dryness() {
        double above = air.humidityRatio() - 0.006;
        return Math.max(0, Math.min(1, 1 - above / 0.006));
    }

    private double capacityAt(Temperature wet, Temperature outdoor) {
        return WinklerEtAl2013.capacityRatio(wet, outdoor) / RATED_CAPACITY_CURVE * Math.pow(massFlowRatio, FLOW_EXPONENT_WET);
    }

    private double powerAt(Temperature outdoor) {
        return WinklerEtAl2013.powerRatio(RatingPoint.RETURN_WET_BULB, outdoor) / RATED_POWER_CURVE
                * (1 + POWER_PER_WET_BULB * (wetBulb.kelvins() - RatingPoint.RETURN_WET_BULB.kelvins()));
    }

    /**
     * For a wet coil the air's wet bulb. Otherwise the wet bulb of air of the same dry bulb whose dew point is just the apparatus dew
     * point, all of the capacity then being sensible: Q(wb)/m = cp (1 − BF)(t − t_dew).
     */
    private Temperature effectiveWetBulb() {
        double bypass = COIL.bypassFactor(massFlowRatio);
        if (sensibleExcess(dewPoint.kelvins(), airWetBulb, bypass) >= 0) {
            return airWetBulb;
        }
        double low = dewPoint.kelvins();
        double high = air.dryBulb().kelvins();
        double guess = Math.min(high - 1, low + 5);
        for (int step = 0; step < MOST_STEPS; step++) {
            MoistAir moister = MoistAir.ofDewPoint(air.dryBulb(), new Temperature(guess), air.pressure());
            Temperature moisterWet = moister.wetBulb();
            double excess = sensibleExcess(guess, moisterWet, bypass);
            if (Math.abs(excess) < 1e-6 * COIL.ratedEnthalpyDrop()) {
                return moisterWet;
            }
            if (excess > 0) {
                high = guess;
            } else {
                low = guess;
            }
            double slope = air.heatCapacity() * (1 - bypass) + COIL.ratedEnthalpyDrop() * 0.011;
            double next = guess - excess / slope;
            guess = next > low && next < high ? next : (low + high) / 2;
        }
        throw new IllegalStateException("no humidity found at which the coil just goes dry in " + air);
    }

    /** Positive when the apparatus must be colder than this dew point to carry the capacity: water condenses. */
    private double sensibleExcess(double dewPointKelvins, Temperature wet, double bypass) {
        double drop = COIL.ratedEnthalpyDrop() * capacityAt(wet, condenserAir) / massFlowRatio;
        return drop - air.heatCapacity() * (1 - bypass) * (air.dryBulb().kelvins() - dewPointKelvins);
    }

    /**
     * A roof unit's behaviour in given air.
     *
     * @param split return minus supply at the coil, before any duct
     * @param apparatusDewPoint mean coil surface
     * @param dry no water is taken out
     * @param capacityRatio capacity over that at the rating point
     * @param powerRatio power at constant voltage over that at the rating point
     */
    public record Response(TemperatureDifference split, Temperature apparatusDewPoint, boolean dry, double capacityRatio,
            double powerRatio) {}
}
