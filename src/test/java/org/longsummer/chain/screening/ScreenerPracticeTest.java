package org.longsummer.chain.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.longsummer.chain.screening.Visits.fahrenheit;
import static org.longsummer.chain.screening.Visits.ordinary;
import static org.longsummer.chain.screening.Visits.screen;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;

/** Each mistake of the trade is recognised, named and answered with what to do. Common practice, no published source. */
class ScreenerPracticeTest {

    @Test
    void anOrdinaryVisitRaisesNothing() {
        assertTrue(screen(ordinary()).findings().isEmpty(), () -> screen(ordinary()).findings().toString());
    }

    private static void retake(Mistake mistake, Field field, ReadingsBuilder readings) {
        Screening screening = screen(readings);
        assertTrue(screening.isRetake(), screening::toString);
        Finding first = screening.findings().get(0);
        assertEquals(mistake, first.mistake(), screening::toString);
        assertEquals(field, first.field());
        assertTrue(screening.isMistaken(field));
        assertFalse(first.text(UnitSystem.US).isBlank());
    }

    private static void remark(Mistake mistake, Field field, Screening screening) {
        assertFalse(screening.isRetake(), screening::toString);
        assertTrue(screening.findings().stream().anyMatch(f -> f.mistake() == mistake && f.field() == field), screening::toString);
    }

    @Test
    void celsiusInAFahrenheitBox() {
        retake(Mistake.CELSIUS_TYPED, Field.RETURN_DRY_BULB, ordinary().returnDryBulb(fahrenheit(26)).supplyDryBulb(fahrenheit(15)).ambientDryBulb(fahrenheit(34)));
        Screening all = screen(ordinary().returnDryBulb(fahrenheit(26)).supplyDryBulb(fahrenheit(5.5)).ambientDryBulb(fahrenheit(34)));
        assertEquals(3, all.findings().stream().filter(f -> f.mistake() == Mistake.CELSIUS_TYPED).count(), all::toString);
        retake(Mistake.CELSIUS_TYPED, Field.SUPPLY_DRY_BULB, ordinary().supplyDryBulb(fahrenheit(16)));
        retake(Mistake.CELSIUS_TYPED, Field.AMBIENT_DRY_BULB, ordinary().ambientDryBulb(fahrenheit(35)));
    }

    @Test
    void fahrenheitInACelsiusBox() {
        retake(Mistake.FAHRENHEIT_TYPED, Field.RETURN_DRY_BULB, ordinary().returnDryBulb(org.longsummer.quantity.Temperature.celsius(79)));
        retake(Mistake.FAHRENHEIT_TYPED, Field.AMBIENT_DRY_BULB, ordinary().ambientDryBulb(org.longsummer.quantity.Temperature.celsius(95)));
    }

    @Test
    void supplyAndReturnSwapped() {
        retake(Mistake.SWAPPED, Field.SUPPLY_DRY_BULB, ordinary().returnDryBulb(fahrenheit(59)).supplyDryBulb(fahrenheit(79)));
        retake(Mistake.SWAPPED, Field.SUPPLY_DRY_BULB, ordinary().returnDryBulb(fahrenheit(43)).supplyDryBulb(fahrenheit(78)));
        assertTrue(screen(ordinary().returnDryBulb(fahrenheit(59)).supplyDryBulb(fahrenheit(79))).usable().split().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(doubles = {790, 7.9, 7900})
    void decimalSlipInATemperature(double typed) {
        retake(Mistake.DECIMAL_SLIP, Field.RETURN_DRY_BULB, ordinary().returnDryBulb(fahrenheit(typed)));
    }

    @Test
    void decimalSlipElsewhere() {
        retake(Mistake.DECIMAL_SLIP, Field.SUPPLY_DRY_BULB, ordinary().supplyDryBulb(fahrenheit(590)));
        retake(Mistake.DECIMAL_SLIP, Field.SUPPLY_DRY_BULB, ordinary().supplyDryBulb(fahrenheit(5.9)));
        retake(Mistake.DECIMAL_SLIP, Field.AMBIENT_DRY_BULB, ordinary().ambientDryBulb(fahrenheit(9.3)));
        retake(Mistake.DECIMAL_SLIP, Field.AMPS, ordinary().amps(new Current(1.21)));
        retake(Mistake.DECIMAL_SLIP, Field.AMPS, ordinary().amps(new Current(1210)));
        retake(Mistake.DECIMAL_SLIP, Field.VOLTS, ordinary().volts(new Voltage(11.6)));
        retake(Mistake.DECIMAL_SLIP, Field.VOLTS, ordinary().volts(new Voltage(1160)));
    }

    @ParameterizedTest
    @CsvSource({"0, CLAMP_AROUND_BOTH", "0.1, CLAMP_AROUND_BOTH", "25.5, CLAMP_AROUND_CORD", "60, HOLD_LEFT_ON", "68, HOLD_LEFT_ON",
            "121, TEN_TURNS", "2.8, IMPOSSIBLE", "400, IMPOSSIBLE"})
    void clampMeterTroubles(double amps, Mistake mistake) {
        retake(mistake, Field.AMPS, ordinary().amps(new Current(amps)));
    }

    @Test
    void notSettled() {
        retake(Mistake.NOT_SETTLED, Field.RUN_TIME, ordinary().runTime(new RunTime(3)));
        remark(Mistake.BARELY_SETTLED, Field.RUN_TIME, screen(ordinary().runTime(new RunTime(10))));
        assertTrue(screen(ordinary().runTime(new RunTime(15))).findings().isEmpty());
    }

    @Test
    void fanOnLow() {
        Screening screening = Screener.screen(Visits.unit(13_500, 115), Visits.visit(ordinary().build(), FanSpeed.LOW, PowerSource.SHORE, false));
        assertTrue(screening.isRetake());
        assertEquals(Mistake.FAN_LOW, screening.findings().get(0).mistake());
    }

    @Test
    void averagingMeterOnAnInverterAndAnIcedCoilAreKeptWithARemark() {
        Screening screening = Screener.screen(Visits.unit(13_500, 115), Visits.visit(ordinary().build(), FanSpeed.HIGH, PowerSource.INVERTER, true));
        remark(Mistake.INVERTER, Field.POWER_SOURCE, screening);
        remark(Mistake.COIL_ICED, Field.WHOLE_VISIT, screening);
    }

    @Test
    void weather() {
        retake(Mistake.TOO_COOL, Field.AMBIENT_DRY_BULB, ordinary().ambientDryBulb(fahrenheit(58)));
        remark(Mistake.COOL_DAY, Field.AMBIENT_DRY_BULB, screen(ordinary().ambientDryBulb(fahrenheit(70))));
        remark(Mistake.TOO_HOT, Field.AMBIENT_DRY_BULB, screen(ordinary().ambientDryBulb(fahrenheit(118))));
        retake(Mistake.TOO_COOL, Field.AMBIENT_DRY_BULB, ordinary().returnDryBulb(fahrenheit(66)).supplyDryBulb(fahrenheit(50)).ambientDryBulb(fahrenheit(35)));
    }

    @Test
    void rooms() {
        remark(Mistake.RETURN_COLD, Field.RETURN_DRY_BULB, screen(ordinary().returnDryBulb(fahrenheit(62)).supplyDryBulb(fahrenheit(45))));
        remark(Mistake.RETURN_HOT, Field.RETURN_DRY_BULB, screen(ordinary().returnDryBulb(fahrenheit(101))));
        retake(Mistake.IMPOSSIBLE, Field.SUPPLY_DRY_BULB, ordinary().returnDryBulb(fahrenheit(85)).supplyDryBulb(fahrenheit(31)));
    }

    @ParameterizedTest
    @CsvSource({"112, false, ''", "101, false, VOLTS_LOW", "92, true, VOLTS_LOW", "128, false, VOLTS_HIGH", "138, true, VOLTS_HIGH",
            "230, true, VOLTS_HIGH", "40, true, IMPOSSIBLE"})
    void volts(double volts, boolean retake, String mistake) {
        Screening screening = screen(ordinary().volts(new Voltage(volts)));
        assertEquals(retake, screening.isRetake());
        assertEquals(mistake, screening.findings().stream().findFirst().map(f -> f.mistake().name()).orElse(""));
    }

    @Test
    void nothingRead() {
        Screening screening = screen(new ReadingsBuilder().ambientDryBulb(fahrenheit(90)));
        assertTrue(screening.isRetake());
        assertEquals(Mistake.NOTHING_TO_JUDGE, screening.findings().get(0).mistake());
    }

    /** An owner with a kitchen thermometer, and one with a clamp meter only, still get an answer. */
    @Test
    void halfAVisitIsAVisit() {
        assertTrue(screen(new ReadingsBuilder().returnDryBulb(fahrenheit(80)).supplyDryBulb(fahrenheit(60))).findings().isEmpty());
        assertTrue(screen(new ReadingsBuilder().amps(new Current(12))).findings().isEmpty());
    }

    @Test
    void theFanRunsAndTheCompressorDoesNot() {
        Screening screening = screen(ordinary().supplyDryBulb(fahrenheit(78)).amps(new Current(2.8)));
        assertTrue(screening.compressorOff());
        remark(Mistake.COMPRESSOR_OFF, Field.AMPS, screening);
        ReadingsBuilder noClamp = new ReadingsBuilder().returnDryBulb(fahrenheit(84)).supplyDryBulb(fahrenheit(83));
        assertTrue(screen(noClamp).compressorOff());
        remark(Mistake.COMPRESSOR_OFF, Field.WHOLE_VISIT, screen(noClamp));
        assertFalse(screen(ordinary().supplyDryBulb(fahrenheit(78)).amps(new Current(2.8)).runTime(new RunTime(2))).compressorOff(), "the thermostat may still wait");
        assertFalse(screen(ordinary().supplyDryBulb(fahrenheit(77))).compressorOff(), "12 A is a compressor running");
        assertFalse(screen(ordinary().supplyDryBulb(fahrenheit(78)).amps(new Current(0.1))).compressorOff(), "the clamp is around both");
    }

    @Test
    void aVariableSpeedUnitsAmpsAreNotJudged() {
        Plate plate = Visits.unit(13_500, 115).plate();
        Plate variable = new Plate(plate.nominal(), plate.refrigerant(), plate.ratedAmps(), plate.ratedAmpsKind(), plate.ratedVolts(), true, false, Optional.empty());
        Screening screening = Screener.screen(Visits.unit(variable), Visits.visit(ordinary().amps(new Current(3.1)).build()));
        remark(Mistake.VARIABLE_SPEED, Field.AMPS, screening);
    }

    /** A mistake reads as a sentence: box, value, what it looks like, what to do; in the reader's own units. */
    @Test
    void words() {
        assertEquals("Amps 0.10 A is almost nothing: is the clamp around both conductors? Put it around one.",
                screen(ordinary().amps(new Current(0.1))).findings().get(0).text(UnitSystem.US));
        assertEquals("Supply air 79.0 °F: supply air is warmer than return air: the two look swapped. Swap the two readings, or read again.",
                screen(ordinary().returnDryBulb(fahrenheit(59)).supplyDryBulb(fahrenheit(79))).findings().get(0).text(UnitSystem.US));
        assertTrue(screen(ordinary().ambientDryBulb(fahrenheit(68))).findings().get(0).text(UnitSystem.SI).startsWith("Outdoor air 20.0 °C is below"));
        for (Mistake mistake : Mistake.values()) {
            String text = new Finding(mistake, Field.WHOLE_VISIT, Optional.empty(), false).text(UnitSystem.US);
            assertTrue(text.endsWith(".") && !text.contains(".."), text);
        }
    }
}
