package org.longsummer.science.cooling;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;

/** Energy is kept, and a coil found for a split shows that split. */
class BypassFactorCoilLawTest {
    private static final Pressure PRESSURE = StandardAtmosphere.pressure(Altitude.feet(1000));

    /** The air that leaves is a mixture of the two streams: its enthalpy is that of the entering air less the capacity per mass. */
    @Test
    void energyIsKept() {
        try (Comparison wet = Comparison.relative(getClass(), "enthalpy given off by a wet coil", "law", 1e-6);
                Comparison dry = Comparison.relative(getClass(), "heat given off by a dry coil", "law", 1e-9)) {
            for (double humidity = 10; humidity <= 90; humidity += 5) {
                MoistAir air = MoistAir.of(Temperature.fahrenheit(78), RelativeHumidity.percent(humidity), PRESSURE);
                for (double drop = 8_000; drop <= 16_000; drop += 1_000) {
                    BypassFactorCoil.Leaving leaving = BypassFactorCoil.leaving(air, drop, 0.25);
                    String where = humidity + " %, " + drop + " J/kg";
                    if (leaving.dry()) {
                        dry.point(where, air.heatCapacity() * leaving.split().kelvins(), drop);
                    } else {
                        double left = 0.25 * air.enthalpy() + 0.75 * MoistAir.saturated(leaving.apparatusDewPoint(), PRESSURE).enthalpy();
                        wet.point(where, air.enthalpy() - left, drop);
                    }
                }
            }
        }
    }

    @Test
    void theCoilFoundShowsTheSplitItWasFoundFor() {
        try (Comparison comparison = Comparison.absolute(getClass(), "split of a coil found from it", "K", "law", 1e-5)) {
            for (double ratio = 0.62; ratio <= 0.80; ratio += 0.03) {
                for (double split = 16; split <= 22; split += 1.5) {
                    BypassFactorCoil coil = BypassFactorCoil.ratedAt(RatingPoint.RETURN_AIR, TemperatureDifference.fahrenheit(split), ratio);
                    comparison.point(split + " °F, " + ratio, BypassFactorCoil.leaving(RatingPoint.RETURN_AIR, coil.ratedEnthalpyDrop(),
                            coil.bypassFactor(1)).split().kelvins(), split / 1.8);
                }
            }
        }
    }

    @Test
    void lessAirIsBypassedLess() {
        BypassFactorCoil coil = BypassFactorCoil.ratedAt(RatingPoint.RETURN_AIR, RoofUnit.RATED_SPLIT, 0.7);
        double before = 0;
        for (double flow = 0.4; flow <= 1.3; flow += 0.05) {
            double bypass = coil.bypassFactor(flow);
            assertTrue(bypass > before && bypass < 1, "at " + flow + " of the air: " + bypass);
            before = bypass;
        }
    }

    /** A line so steep that it misses the saturation line. */
    @Test
    void aCoilThatCannotBeIsRefused() {
        TemperatureDifference split = TemperatureDifference.fahrenheit(10);
        assertThrows(IllegalArgumentException.class, () -> BypassFactorCoil.ratedAt(RatingPoint.RETURN_AIR, split, 0.30));
    }
}
