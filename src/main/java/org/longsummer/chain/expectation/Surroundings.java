package org.longsummer.chain.expectation;

import org.longsummer.quantity.Temperature;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * The conditions of a visit as the unit felt them, each with its standard uncertainty: readings merged with what else is known.
 *
 * @param returnAir air entering the evaporator
 * @param returnDryBulbU of its dry bulb, K
 * @param lnHumidityU of the natural logarithm of its humidity ratio
 * @param humidityRead a humidity was read at the visit
 * @param condenserAir air entering the condenser
 * @param condenserAirU K
 * @param voltageRatio volts under load over rated volts, with its standard uncertainty
 * @param sunHeight sine of the sun's height
 * @param ductGain share of the way from supply to ceiling temperature that the air warms before it is read
 * @param cavity temperature of the ceiling around the ducts
 */
public record Surroundings(MoistAir returnAir, double returnDryBulbU, double lnHumidityU, boolean humidityRead,
        Temperature condenserAir, double condenserAirU, Uncertain voltageRatio, double sunHeight, double ductGain, Temperature cavity) {

    /** The same with other return air; the ceiling follows it half the way. */
    Surroundings withReturn(MoistAir air) {
        double warmer = air.dryBulb().kelvins() - returnAir.dryBulb().kelvins();
        return new Surroundings(air, returnDryBulbU, lnHumidityU, humidityRead, condenserAir, condenserAirU, voltageRatio, sunHeight,
                ductGain, new Temperature(cavity.kelvins() + warmer / 2));
    }

    /** The same with other air at the condenser; the ceiling follows it half the way. */
    Surroundings withCondenserAir(Temperature air) {
        double warmer = air.kelvins() - condenserAir.kelvins();
        return new Surroundings(returnAir, returnDryBulbU, lnHumidityU, humidityRead, air, condenserAirU, voltageRatio, sunHeight,
                ductGain, new Temperature(cavity.kelvins() + warmer / 2));
    }
}
