package org.longsummer.science.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

    /** The same of what the search for a wet bulb leans on, over ice and over liquid. */
    @Test
    void slopesOfEnthalpyAndOfAdiabaticSaturationAreDerivatives() {
        double h = 1e-3;
        for (double feet : FEET) {
            double p = StandardAtmosphere.pressure(Altitude.feet(feet)).pascals();
            for (double celsius = -39.3; celsius < 50; celsius += 1.7) {
                double kelvins = celsius + 273.15;
                double saturated = MoistAir.ratio(HylandWexler1983.pascals(kelvins), p);
                double enthalpies = (saturatedEnthalpy(celsius + h, p) - saturatedEnthalpy(celsius - h, p)) / (2 * h);
                assertEquals(enthalpies, MoistAir.slopeOfEnthalpy(saturated, kelvins), 1e-6 * enthalpies, celsius + " °C, enthalpy");
                double dryBulb = celsius + 11;
                double value = AdiabaticSaturation.humidityRatio(dryBulb, celsius, p);
                double ratios = (AdiabaticSaturation.humidityRatio(dryBulb, celsius + h, p) - AdiabaticSaturation.humidityRatio(dryBulb, celsius - h, p)) / (2 * h);
                assertEquals(ratios, AdiabaticSaturation.slope(dryBulb, celsius, saturated, MoistAir.slopeOfRatio(saturated, kelvins), value, celsius > 0),
                        1e-6 * ratios, celsius + " °C, adiabatic saturation");
            }
        }
    }

    private static double saturatedEnthalpy(double celsius, double pressure) {
        return MoistAir.saturated(Temperature.celsius(celsius), new Pressure(pressure)).enthalpy();
    }

    /** As near as they say they are: a search that begins elsewhere would only be slow, and nobody would see it. */
    @Test
    void searchesBeginWhereTheySay() {
        for (double feet = 0; feet <= 10_000; feet += 1_000) {
            double p = StandardAtmosphere.pressure(Altitude.feet(feet)).pascals();
            for (double celsius = -10; celsius <= 35; celsius += 0.5) {
                assertEquals(celsius, MoistAir.startAtEnthalpy(saturatedEnthalpy(celsius, p), p), 1, celsius + " °C at " + feet + " ft");
            }
            assertEquals(-40, MoistAir.startAtEnthalpy(-1e6, p), 0, "colder than the line reaches");
        }
        for (double celsius = -50; celsius <= 60; celsius += 0.5) {
            double logarithm = Math.log(HylandWexler1983.pascals(celsius + 273.15));
            assertEquals(celsius, HylandWexler1983.start(logarithm) - 273.15, 3, celsius + " °C by its vapour pressure");
        }
        assertEquals(273.16, HylandWexler1983.start(Math.log(611.657)), 0.01, "the line goes through the triple point");
        assertEquals(HylandWexler1983.HOTTEST, HylandWexler1983.start(30), 0);
        assertEquals(HylandWexler1983.COLDEST, HylandWexler1983.start(-100), 0);
    }

    /** From the dry bulb down to that of dry air, and no further. */
    @Test
    void airCanHaveTheWetBulbsOfSomeHumidity() {
        for (double feet : FEET) {
            Pressure pressure = StandardAtmosphere.pressure(Altitude.feet(feet));
            for (double fahrenheit = 50; fahrenheit <= 120; fahrenheit += 7) {
                Temperature dryBulb = Temperature.fahrenheit(fahrenheit);
                Temperature driest = state(fahrenheit, 0, feet).wetBulb();
                assertTrue(MoistAir.canHaveWetBulb(dryBulb, dryBulb, pressure));
                assertTrue(MoistAir.canHaveWetBulb(dryBulb, new Temperature(driest.kelvins() + 0.01), pressure));
                assertFalse(MoistAir.canHaveWetBulb(dryBulb, new Temperature(driest.kelvins() - 0.01), pressure));
                assertFalse(MoistAir.canHaveWetBulb(dryBulb, new Temperature(dryBulb.kelvins() + 0.01), pressure));
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
        assertEquals(0, new MoistAir(Temperature.celsius(12), wet, pressure).wetBulb().celsius(), 1e-6, "just there, too");
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
        refused("cannot hold", () -> MoistAir.of(Temperature.celsius(30), RelativeHumidity.percent(100), HylandWexler1983.saturationPressure(Temperature.celsius(30))));
        refused("not at 201", () -> HylandWexler1983.saturationPressure(Temperature.celsius(201)));
        refused("not at -101", () -> HylandWexler1983.saturationPressure(Temperature.celsius(-101)));
        refused("standard atmosphere", () -> StandardAtmosphere.pressure(new Altitude(-5_001)));
        assertEquals(StandardAtmosphere.temperature(StandardAtmosphere.HIGHEST).celsius(), 15 - 0.0065 * 11_000, 1e-9, "its ends belong to the range");
        assertEquals(StandardAtmosphere.temperature(StandardAtmosphere.LOWEST).celsius(), 15 + 0.0065 * 5_000, 1e-9);
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
