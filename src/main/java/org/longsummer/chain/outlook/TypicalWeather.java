package org.longsummer.chain.outlook;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.FaultEffect;
import org.longsummer.chain.condition.Growth;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.cooling.RoofUnit;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;

/** How faults come, grow and show in the season's usual weather: the bridge from what a history says to what lies ahead. */
public final class TypicalWeather {
    /** A room that is being cooled on a summer afternoon (practice). */
    private static final Temperature RETURN_DRY_BULB = Temperature.fahrenheit(78);
    private static final RelativeHumidity RETURN_HUMIDITY = RelativeHumidity.percent(45);
    private static final Temperature CONDENSER_AIR = Temperature.fahrenheit(95);

    private TypicalWeather() {}

    /** The model of faults at a depot's altitude. */
    public static FaultModel faultModel(Altitude altitude) {
        RoofUnit sound = new RoofUnit(
                MoistAir.of(RETURN_DRY_BULB, RETURN_HUMIDITY, StandardAtmosphere.pressure(altitude)), CONDENSER_AIR);
        List<Effects> effects = new ArrayList<>();
        List<Double> onsets = new ArrayList<>();
        for (Fault fault : Fault.values()) {
            effects.add(effects(FaultEffect.of(fault, sound, CONDENSER_AIR)));
            onsets.add(fault.hazard());
        }
        return new FaultModel(effects, onsets, Growth.ways());
    }

    private static Effects effects(FaultEffect effect) {
        return Effects.of(effect::splitRatio, effect::capacityRatio, effect::ampsRatio);
    }
}
