package org.longsummer.chain.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.longsummer.chain.screening.Visits.ordinary;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;

class ScreenerLawTest {

    /** The same machine for twice the volts draws half the amps: nothing else may change. */
    @Test
    void aPlateOf230VoltsIsScreenedLikeOneOf115() {
        for (double btuh : new double[] {11_000, 13_500, 15_000}) {
            for (double amps = 0; amps < 140; amps += 0.1) {
                for (double volts : new double[] {11.5, 90, 100, 115, 130, 140, 1150}) {
                    List<Mistake> at115 = mistakes(Visits.unit(btuh, 115), amps, volts);
                    assertEquals(at115, mistakes(Visits.unit(btuh, 230), amps / 2, 2 * volts), amps + " A " + volts + " V");
                }
            }
        }
    }

    private static List<Mistake> mistakes(Unit unit, double amps, double volts) {
        Readings readings = ordinary().amps(new Current(amps)).volts(new Voltage(volts)).build();
        return Screener.screen(unit, Visits.visit(readings)).findings().stream().map(Finding::mistake).toList();
    }

    /** Every amp reading of a running unit is either kept or named; from nothing upwards, kept ones form one range. */
    @Test
    void keptAmpsFormOneRange() {
        for (Unit unit : List.of(Visits.unit(13_500, 115), Visits.unit(9_500, 230), Visits.unit(Plate.UNREAD), Visits.unit(13_500, 7))) {
            int changes = 0;
            boolean before = false;
            for (double amps = 0; amps < 200; amps += 0.05) {
                boolean kept = mistakes(unit, amps, RunningAmps.ratedVolts(unit.plate())).isEmpty();
                changes += kept != before ? 1 : 0;
                before = kept;
            }
            assertEquals(2, changes);
        }
    }

    /** A number that fits a box is nowhere called a mistake, and one that does not is called one in both systems of units. */
    @Test
    void theReadersUnitsChangeNothing() {
        for (double fahrenheit = -200; fahrenheit < 2000; fahrenheit += 0.5) {
            Temperature same = Temperature.celsius(Temperature.fahrenheit(fahrenheit).celsius());
            assertEquals(retakes(ordinary().returnDryBulb(Temperature.fahrenheit(fahrenheit))), retakes(ordinary().returnDryBulb(same)));
        }
    }

    private static boolean retakes(ReadingsBuilder readings) {
        return Visits.screen(readings).isRetake();
    }

    /** Whatever is typed: an answer, words for every finding, and nothing left in a box that is called mistaken. */
    @Test
    void anythingCanBeTyped() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            Screening screening = Screener.screen(oddUnit(random), Visits.visit(oddReadings(random),
                    FanSpeed.values()[random.nextInt(3)], PowerSource.values()[random.nextInt(4)], random.nextBoolean()));
            for (Finding finding : screening.findings()) {
                assertTrue(finding.text(UnitSystem.SI).length() > 20, finding::toString);
            }
            Readings usable = screening.usable();
            assertTrue(!screening.isMistaken(Field.AMPS) || usable.amps().isEmpty());
            assertTrue(!screening.isMistaken(Field.SUPPLY_DRY_BULB) || usable.split().isEmpty());
            assertTrue(!screening.isMistaken(Field.RETURN_HUMIDITY) || usable.returnMoisture().isEmpty());
            assertTrue(!screening.compressorOff() || screening.findings().stream().anyMatch(f -> f.mistake() == Mistake.COMPRESSOR_OFF));
        }
    }

    private static Unit oddUnit(Random random) {
        return random.nextBoolean() ? Visits.unit(Plate.UNREAD) : Visits.unit(odd(random, 13_500), odd(random, 115));
    }

    private static Readings oddReadings(Random random) {
        ReadingsBuilder readings = ordinary();
        List<Runnable> boxes = List.of(() -> readings.returnDryBulb(temperature(random)), () -> readings.supplyDryBulb(temperature(random)),
                () -> readings.ambientDryBulb(temperature(random)), () -> readings.returnMoisture(new Moisture.WetBulb(temperature(random))),
                () -> readings.returnMoisture(new Moisture.DewPoint(temperature(random))),
                () -> readings.returnMoisture(new Moisture.Relative(RelativeHumidity.percent(odd(random, 50)))),
                () -> readings.amps(new Current(odd(random, 12))), () -> readings.volts(new Voltage(odd(random, 115))),
                () -> readings.runTime(new RunTime(odd(random, 15))), () -> readings.roomDryBulb(temperature(random)),
                () -> readings.condenserEntering(temperature(random)), () -> readings.condenserLeaving(temperature(random)),
                () -> readings.fanOnlyAmps(new Current(odd(random, 3))), () -> readings.startPeak(new Current(odd(random, 60))),
                () -> readings.capacitor(new Capacitance(odd(random, 40))), () -> readings.ambientHumidity(RelativeHumidity.percent(odd(random, 50))));
        for (int i = 0; i < 4; i++) {
            boxes.get(random.nextInt(boxes.size())).run();
        }
        return readings.build();
    }

    private static Temperature temperature(Random random) {
        return Temperature.fahrenheit(odd(random, 80));
    }

    /** Near the usual, or off by powers of ten, of either sign. */
    private static double odd(Random random, double usual) {
        return usual * (0.6 + random.nextDouble()) * Math.pow(10, random.nextInt(7) - 3) * (random.nextInt(10) == 0 ? -1 : 1);
    }
}
