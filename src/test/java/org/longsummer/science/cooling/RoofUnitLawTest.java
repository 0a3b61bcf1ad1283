package org.longsummer.science.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.BiConsumer;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;

/**
 * What holds of every roof unit over 60 to 115 °F outdoors, 65 to 95 °F return, 15 to 85 % humidity and 0 to 10,000 ft, and that
 * beyond it, as far as a reading may go, an answer is still given.
 */
class RoofUnitLawTest {
    private static final double[] FEET = {0, 1000, 2500, 5000, 7500, 10_000};

    private static RoofUnit unit(double returnF, double humidity, double outdoorF, double feet) {
        return new RoofUnit(MoistAir.of(Temperature.fahrenheit(returnF), RelativeHumidity.percent(humidity),
                StandardAtmosphere.pressure(Altitude.feet(feet))), Temperature.fahrenheit(outdoorF));
    }

    private static void everywhere(BiConsumer<String, RoofUnit> law) {
        for (double feet : FEET) {
            for (double returnF = 65; returnF <= 95; returnF += 5) {
                for (double humidity = 15; humidity <= 85; humidity += 7) {
                    for (double outdoorF = 60; outdoorF <= 115; outdoorF += 5) {
                        law.accept(returnF + " °F, " + humidity + " %, " + outdoorF + " °F, " + feet + " ft",
                                unit(returnF, humidity, outdoorF, feet));
                    }
                }
            }
        }
    }

    private static double split(RoofUnit unit) {
        return unit.sound().split().kelvins();
    }

    private static double power(RoofUnit unit) {
        return unit.sound().powerRatio();
    }

    @Test
    void aSaneAnswerEverywhere() {
        everywhere((where, unit) -> {
            double split = unit.sound().split().fahrenheit();
            assertTrue(split > 3 && split < 45, where + ": split " + split);
            assertTrue(unit.sound().capacityRatio() > 0.4 && unit.sound().capacityRatio() < 1.7, where + ": " + unit.sound());
            assertTrue(power(unit) > 0.6 && power(unit) < 1.4, where + ": " + unit.sound());
        });
    }

    /** No air leaves the coil colder than the coil's surface. */
    @Test
    void theSupplyIsNotColderThanTheCoil() {
        for (double returnF = 65; returnF <= 95; returnF += 5) {
            for (double humidity = 15; humidity <= 85; humidity += 7) {
                RoofUnit unit = unit(returnF, humidity, 95, 0);
                double supply = Temperature.fahrenheit(returnF).kelvins() - split(unit);
                assertTrue(supply >= unit.sound().apparatusDewPoint().kelvins() - 1e-6, returnF + " °F, " + humidity + " %");
            }
        }
    }

    /** Readings that screening lets pass reach further than the curves. */
    @Test
    void anAnswerAlsoBeyond() {
        for (double feet = -500; feet <= 13_000; feet += 1500) {
            for (double returnF = 55; returnF <= 125; returnF += 5) {
                for (double humidity = 3; humidity <= 99; humidity += 6) {
                    for (double outdoorF = 60; outdoorF <= 140; outdoorF += 10) {
                        RoofUnit unit = unit(returnF, humidity, outdoorF, feet);
                        assertTrue(split(unit) > 0 && Double.isFinite(split(unit)) && power(unit) > 0 && unit.sound().capacityRatio() > 0,
                                returnF + " °F, " + humidity + " %, " + outdoorF + " °F, " + feet + " ft: " + unit.sound());
                    }
                }
            }
        }
    }

    /** Steps along one input, all else fixed, in the middle and at the corners of the rest. */
    private static void along(double from, double to, double step, DoubleFunction<RoofUnit> at, ToDoubleFunction<RoofUnit> result, int sign,
            String law) {
        double before = result.applyAsDouble(at.apply(from));
        for (double x = from + step; x <= to + 1e-9; x += step) {
            double value = result.applyAsDouble(at.apply(x));
            assertTrue(sign * (value - before) >= -1e-9, law + " at " + x + ": " + before + " then " + value);
            before = value;
        }
    }

    private interface Corner {
        void at(double returnF, double humidity, double outdoorF, double feet);
    }

    private static void corners(Corner corner) {
        for (double returnF : new double[] {65, 78, 95}) {
            for (double humidity : new double[] {15, 35, 50, 85}) {
                for (double outdoorF : new double[] {60, 90, 115}) {
                    for (double feet : new double[] {0, 5000, 10_000}) {
                        corner.at(returnF, humidity, outdoorF, feet);
                    }
                }
            }
        }
    }

    @Test
    void aHotterDayDrawsMoreAndCoolsLess() {
        corners((returnF, humidity, outdoorF, feet) -> {
            DoubleFunction<RoofUnit> hotter = x -> unit(returnF, humidity, x, feet);
            along(60, 115, 1, hotter, RoofUnitLawTest::power, 1, "amps with outdoor air");
            along(60, 115, 1, hotter, RoofUnitLawTest::split, -1, "split with outdoor air");
            along(60, 115, 1, hotter, u -> u.sound().capacityRatio(), -1, "capacity with outdoor air");
        });
    }

    @Test
    void moistAirSplitsLess() {
        corners((returnF, humidity, outdoorF, feet) -> {
            DoubleFunction<RoofUnit> moister = x -> unit(returnF, x, outdoorF, feet);
            along(15, 85, 1, moister, RoofUnitLawTest::split, -1, "split with humidity");
            along(15, 85, 1, moister, RoofUnitLawTest::power, 1, "amps with humidity");
        });
    }

    /** Less air is cooled further; not where nearly all of the capacity goes into water, of which thin air holds more. */
    @Test
    void thinAirSplitsMore() {
        corners((returnF, humidity, outdoorF, feet) -> {
            DoubleFunction<RoofUnit> higher = x -> unit(returnF, humidity, outdoorF, x);
            if (humidity <= 50) {
                along(0, 10_000, 500, higher, RoofUnitLawTest::split, 1, "split with altitude");
            }
            along(0, 10_000, 500, higher, u -> u.sound().capacityRatio(), -1, "capacity with altitude");
        });
    }

    /** Where the coil just goes dry both formulas meet; the border is found by halving. */
    @Test
    void dryAndWetMeet() {
        corners((returnF, ignored, outdoorF, feet) -> {
            double dry = 5;
            double wet = 90;
            assertTrue(unit(returnF, dry, outdoorF, feet).sound().dry() && !unit(returnF, wet, outdoorF, feet).sound().dry());
            for (int step = 0; step < 50; step++) {
                double middle = (dry + wet) / 2;
                if (unit(returnF, middle, outdoorF, feet).sound().dry()) {
                    dry = middle;
                } else {
                    wet = middle;
                }
            }
            RoofUnit below = unit(returnF, dry - 1e-6, outdoorF, feet);
            RoofUnit above = unit(returnF, wet + 1e-6, outdoorF, feet);
            String where = returnF + " °F, " + wet + " %, " + outdoorF + " °F, " + feet + " ft";
            assertEquals(split(below), split(above), 1e-4, where + ": split, K");
            assertEquals(power(below), power(above), 1e-5, where + ": power");
            assertEquals(below.sound().capacityRatio(), above.sound().capacityRatio(), 1e-5, where + ": capacity");
        });
    }

    @Test
    void nothingAlteredChangesNothing() {
        corners((returnF, humidity, outdoorF, feet) -> {
            RoofUnit unit = unit(returnF, humidity, outdoorF, feet);
            assertEquals(unit.sound(), unit.respond(new Alteration(0, 1, 1, 1)));
        });
    }

    @Test
    void otherAirAtTheCondenserIsLikeAnotherUnitInIt() {
        corners((returnF, humidity, outdoorF, feet) -> {
            RoofUnit unit = unit(returnF, humidity, outdoorF, feet);
            RoofUnit hotter = unit.withCondenserAir(Temperature.fahrenheit(outdoorF + 10));
            assertEquals(unit(returnF, humidity, outdoorF + 10, feet).sound(), hotter.sound());
            if (!unit.sound().dry() && !hotter.sound().dry()) {
                double capacity = unit.respond(new Alteration(10 / 1.8, 1, 1, 1)).capacityRatio();
                assertEquals(hotter.sound().capacityRatio(), capacity, 1e-12, "a hotter condenser is like a hotter day");
            }
        });
    }

    /** A wet coil's curves are read at the air's own wet bulb; a dry one's at the wet bulb of moister air, at which it just goes dry. */
    @Test
    void curvesAreReadAtAWetBulbThatTheCoilFeels() {
        corners((returnF, humidity, outdoorF, feet) -> {
            MoistAir air = MoistAir.of(Temperature.fahrenheit(returnF), RelativeHumidity.percent(humidity), StandardAtmosphere.pressure(Altitude.feet(feet)));
            RoofUnit unit = new RoofUnit(air, Temperature.fahrenheit(outdoorF));
            assertEquals(air.dewPoint(), unit.returnDewPoint());
            if (unit.sound().dry()) {
                assertTrue(unit.wetBulb().compareTo(air.wetBulb()) > 0 && unit.wetBulb().compareTo(air.dryBulb()) < 0);
                MoistAir moister = MoistAir.ofWetBulb(air.dryBulb(), unit.wetBulb(), air.pressure());
                RoofUnit border = new RoofUnit(moister, Temperature.fahrenheit(outdoorF));
                assertEquals(moister.dewPoint().kelvins(), border.sound().apparatusDewPoint().kelvins(), 0.05, "it just goes dry there");
            } else {
                assertEquals(air.wetBulb(), unit.wetBulb());
            }
        });
    }

    /** ln capacity over ln flow: what a change of the flow does to the capacity, apart from all else. */
    private static double flowExponent(RoofUnit unit, double flow) {
        return Math.log(unit.respond(new Alteration(0, flow, 1, 1)).capacityRatio() / unit.sound().capacityRatio()) / Math.log(flow);
    }

    /** The drier the air, the more of its capacity a coil loses with its flow: from air of 12 g/kg on down to 6 g/kg, beyond them no more. */
    @Test
    void aDryCoilLosesMoreOfItsCapacityWithItsFlow() {
        double before = 1;
        for (double grams = 3; grams <= 17; grams += 0.5) {
            double humidityRatio = grams / 1000;
            RoofUnit unit = new RoofUnit(new MoistAir(Temperature.fahrenheit(85), humidityRatio, StandardAtmosphere.pressure(Altitude.SEA_LEVEL)),
                    RatingPoint.OUTDOOR);
            double exponent = flowExponent(unit, 0.7);
            assertEquals(exponent, flowExponent(unit, 0.9), 1e-9, "a power of the flow");
            assertTrue(exponent > 0 && (grams <= 6 || grams > 12 ? grams == 3 || Math.abs(exponent - before) < 1e-9 : exponent < before - 1e-3),
                    grams + " g/kg: " + before + " then " + exponent);
            before = exponent;
        }
    }

    /** Signs of Rossi and Braun (1997): a dirty condenser splits less and draws more, a starved evaporator splits more and draws less. */
    @Test
    void faultsMoveInTheirDirections() {
        corners((returnF, humidity, outdoorF, feet) -> {
            RoofUnit unit = unit(returnF, humidity, outdoorF, feet);
            RoofUnit.Response sound = unit.sound();
            RoofUnit.Response condenser = unit.respond(new Alteration(5, 1, 1, 1));
            RoofUnit.Response evaporator = unit.respond(new Alteration(0, 0.8, 1, 1));
            RoofUnit.Response weak = unit.respond(new Alteration(0, 1, 0.9, 0.97));
            assertTrue(condenser.split().kelvins() < sound.split().kelvins() && condenser.powerRatio() > sound.powerRatio());
            assertTrue(evaporator.split().kelvins() > sound.split().kelvins() && evaporator.powerRatio() < sound.powerRatio());
            assertTrue(weak.split().kelvins() < sound.split().kelvins() && weak.powerRatio() < sound.powerRatio());
        });
    }
}
