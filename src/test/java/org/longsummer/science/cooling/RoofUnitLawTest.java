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
