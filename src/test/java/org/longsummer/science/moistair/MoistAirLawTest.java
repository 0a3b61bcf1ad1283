package org.longsummer.science.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;

/** Round trips, monotony and limits over −40 to 140 °F, 0 to 100 % and −200 to 10,000 ft. */
class MoistAirLawTest {
    private static final double[] FEET = {-200, 0, 1000, 2500, 5280, 7500, 10_000};
    private static final double[] PERCENT = {0, 0.1, 1, 2, 5, 10, 15, 20, 30, 40, 50, 60, 70, 80, 90, 95, 99, 99.9, 100};

    private static void everyState(Consumer<MoistAir> law) {
        for (double feet : FEET) {
            for (double dryBulb = -40; dryBulb <= 140; dryBulb += 1.5) {
                for (double percent : PERCENT) {
                    law.accept(state(dryBulb, percent, feet));
                }
            }
        }
    }

    private static MoistAir state(double fahrenheit, double percent, double feet) {
        return MoistAir.of(Temperature.fahrenheit(fahrenheit), RelativeHumidity.percent(percent),
                StandardAtmosphere.pressure(Altitude.feet(feet)));
    }

    @Test
    void wetBulbGivesBackTheState() {
        try (Comparison comparison = Comparison.absolute(getClass(), "round trip by wet bulb, humidity ratio", "kg/kg", "law", 1e-10)) {
            everyState(air -> comparison.point(air.toString(),
                    MoistAir.ofWetBulb(air.dryBulb(), air.wetBulb(), air.pressure()).humidityRatio(), air.humidityRatio()));
        }
    }

    @Test
    void dewPointGivesBackTheState() {
        try (Comparison comparison = Comparison.relative(getClass(), "round trip by dew point, humidity ratio", "law", 1e-10)) {
            everyState(air -> comparison.point(air.toString(),
                    MoistAir.ofDewPoint(air.dryBulb(), air.dewPoint(), air.pressure()).humidityRatio(), air.humidityRatio()));
        }
    }

    @Test
    void relativeHumidityGivesBackTheState() {
        try (Comparison comparison = Comparison.relative(getClass(), "round trip by relative humidity, humidity ratio", "law", 1e-10)) {
            everyState(air -> comparison.point(air.toString(),
                    MoistAir.of(air.dryBulb(), air.relativeHumidity(), air.pressure()).humidityRatio(), air.humidityRatio()));
        }
    }

    @Test
    void enthalpyOfSaturatedAirGivesBackItsTemperature() {
        try (Comparison comparison = Comparison.absolute(getClass(), "round trip by enthalpy of saturated air", "K", "law", 2e-7)) {
            for (double feet : FEET) {
                for (double celsius = -60; celsius <= 80; celsius += 0.37) {
                    MoistAir air = MoistAir.saturated(Temperature.celsius(celsius), StandardAtmosphere.pressure(Altitude.feet(feet)));
                    MoistAir back = MoistAir.saturatedAtEnthalpy(air.enthalpy(), air.pressure());
                    comparison.point(celsius + " °C at " + feet + " ft", back.dryBulb().celsius(), celsius);
                }
            }
        }
    }

    @Test
    void saturationTemperatureGivesBackThePressure() {
        try (Comparison comparison = Comparison.absolute(getClass(), "round trip by saturation pressure", "K", "law", 1e-9)) {
            for (double celsius = -100; celsius <= 200; celsius += 0.5) {
                Pressure pressure = HylandWexler1983.saturationPressure(Temperature.celsius(celsius));
                comparison.point(celsius + " °C", HylandWexler1983.saturationTemperature(pressure).celsius(), celsius);
            }
        }
    }

    @Test
    void dewPointIsAtMostWetBulbIsAtMostDryBulb() {
        everyState(air -> {
            double dewPoint = air.dewPoint().celsius();
            double wetBulb = air.wetBulb().celsius();
            assertTrue(wetBulb <= air.dryBulb().celsius() + 1e-9, air::toString);
            assertTrue(dewPoint <= wetBulb + 1e-6, air::toString);
        });
    }

    @Test
    void saturatedAirHasOneTemperature() {
        for (double feet : FEET) {
            for (double fahrenheit = -40; fahrenheit <= 140; fahrenheit += 1) {
                MoistAir air = state(fahrenheit, 100, feet);
                assertEquals(fahrenheit, air.wetBulb().fahrenheit(), 1e-6, air::toString);
                assertEquals(fahrenheit, air.dewPoint().fahrenheit(), 1e-6, air::toString);
            }
        }
    }

    @Test
    void moreMoistureRaisesWetBulbDewPointEnthalpyAndVolume() {
        for (double feet : FEET) {
            for (double fahrenheit = -40; fahrenheit <= 140; fahrenheit += 3) {
                MoistAir drier = state(fahrenheit, 0, feet);
                for (double percent = 0.5; percent <= 100; percent += 0.5) {
                    MoistAir moister = state(fahrenheit, percent, feet);
                    assertTrue(moister.wetBulb().compareTo(drier.wetBulb()) > 0, moister::toString);
                    assertTrue(moister.dewPoint().compareTo(drier.dewPoint()) > 0, moister::toString);
                    assertTrue(moister.enthalpy() > drier.enthalpy(), moister::toString);
                    assertTrue(moister.specificVolume() > drier.specificVolume(), moister::toString);
                    drier = moister;
                }
            }
        }
    }

    @Test
    void saturationPressureRisesAndMeetsAtTheTriplePoint() {
        double before = 0;
        for (double celsius = -100; celsius <= 200; celsius += 0.005) {
            double now = HylandWexler1983.saturationPressure(Temperature.celsius(celsius)).pascals();
            assertTrue(now > before, "falls at " + celsius + " °C");
            before = now;
        }
        double ice = HylandWexler1983.pascals(273.16);
        double liquid = HylandWexler1983.pascals(273.16 + 1e-9);
        assertEquals(ice, liquid, ice * 1e-7);
    }

    /** The solvers lean on it: a wrong slope would only be slow, and nobody would see it. */
    @Test
    void slopeIsTheDerivative() {
        try (Comparison comparison = Comparison.relative(getClass(), "slope of the saturation pressure's logarithm", "law", 1e-6)) {
            for (double t = 175; t <= 470; t += 1.7) {
                double difference = (Math.log(HylandWexler1983.pascals(t + 1e-3)) - Math.log(HylandWexler1983.pascals(t - 1e-3))) / 2e-3;
                comparison.point(t + " K", HylandWexler1983.logarithmicSlope(t), difference);
            }
        }
    }

    @Test
    void thinnerAirHoldsMoreVapourPerKilogramAndTakesMoreRoom() {
        assertTrue(state(80, 50, 5000).humidityRatio() > state(80, 50, 0).humidityRatio());
        assertTrue(state(80, 50, 5000).specificVolume() > state(80, 50, 0).specificVolume());
        assertEquals(state(80, 50, 5000).dewPoint().fahrenheit(), state(80, 50, 0).dewPoint().fahrenheit(), 1e-9);
    }

    @Test
    void fogHasItsOwnTemperatureAsWetBulb() {
        MoistAir fog = new MoistAir(Temperature.fahrenheit(60), 0.02, new Pressure(101325));
        assertEquals(60, fog.wetBulb().fahrenheit(), 1e-9);
        assertTrue(fog.relativeHumidity().fraction() > 1);
        assertTrue(MoistAir.ofWetBulb(Temperature.fahrenheit(60), Temperature.fahrenheit(61), fog.pressure()).relativeHumidity().fraction() > 1);
    }

    /** Between an iced and a wet wick at 0 °C there is a step: one humidity ratio, and the wet wick is the one we report. */
    @Test
    void wetBulbIsThatOfAWetWickWhereOneCanBe() {
        Pressure pressure = new Pressure(101325);
        double wet = AdiabaticSaturation.humidityRatio(12, 0, pressure.pascals());
        double iced = AdiabaticSaturation.humidityRatio(12, -1e-9, pressure.pascals());
        assertTrue(wet < iced);
        assertTrue(new MoistAir(Temperature.celsius(12), (wet + iced) / 2, pressure).wetBulb().celsius() > 0);
        assertTrue(new MoistAir(Temperature.celsius(12), wet - 1e-9, pressure).wetBulb().celsius() < 0);
    }

    @Test
    void whatNoAirCanBeIsRefusedByName() {
        Pressure pressure = new Pressure(101325);
        refused("wet bulb", () -> MoistAir.ofWetBulb(Temperature.fahrenheit(80), Temperature.fahrenheit(40), pressure));
        refused("cannot hold", () -> MoistAir.of(Temperature.celsius(101), RelativeHumidity.percent(100), pressure));
        refused("cannot hold", () -> MoistAir.of(Temperature.celsius(20), RelativeHumidity.percent(-1), pressure));
        refused("cannot hold", () -> MoistAir.of(Temperature.celsius(20), new RelativeHumidity(Double.NaN), pressure));
        refused("published from -100", () -> MoistAir.of(Temperature.celsius(-101), RelativeHumidity.percent(50), pressure));
        refused("no saturated air", () -> MoistAir.saturatedAtEnthalpy(1e9, pressure));
        refused("no saturated air", () -> MoistAir.saturatedAtEnthalpy(-1e9, pressure));
        refused("standard atmosphere", () -> StandardAtmosphere.pressure(Altitude.feet(45_000)));
        refused("standard atmosphere", () -> StandardAtmosphere.temperature(new Altitude(Double.NaN)));
        refused("saturates", () -> HylandWexler1983.saturationTemperature(new Pressure(0)));
        refused("saturates", () -> HylandWexler1983.saturationTemperature(new Pressure(1e9)));
    }

    private static void refused(String words, Runnable call) {
        IllegalArgumentException error = assertThrows(IllegalArgumentException.class, call::run);
        assertTrue(error.getMessage().contains(words), error.getMessage());
    }
}
