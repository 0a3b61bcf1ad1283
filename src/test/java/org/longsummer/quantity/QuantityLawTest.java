package org.longsummer.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;

/** Round trips between the units people type, fixed points that define the units, and what a sentence prints. */
class QuantityLawTest {

    @Test
    void typedTemperaturesComeBack() {
        try (Comparison comparison = Comparison.absolute(getClass(), "round trip of a temperature", "K", "law", 1e-10)) {
            for (double typed = -100; typed <= 300; typed += 0.1) {
                for (UnitSystem system : UnitSystem.values()) {
                    comparison.point(typed + " " + system, system.number(system.temperature(typed)), typed);
                }
            }
        }
    }

    /** What was typed prints as it was typed: the rounding of the storage never shows. */
    @Test
    void typedTemperaturesPrintAsTyped() {
        for (int tenths = -400; tenths <= 2000; tenths++) {
            for (UnitSystem system : UnitSystem.values()) {
                Temperature stored = new Temperature(system.temperature(tenths / 10.0).kelvins());
                assertEquals(Decimal.text(tenths / 10.0, 1) + " " + system.temperatureSymbol(), stored.text(system));
            }
        }
    }

    @Test
    void fixedPoints() {
        assertEquals(32, Temperature.celsius(0).fahrenheit(), 1e-10);
        assertEquals(212, Temperature.celsius(100).fahrenheit(), 1e-10);
        assertEquals(-40, Temperature.fahrenheit(-40).celsius(), 1e-10);
        assertEquals(0, Temperature.fahrenheit(-459.67).kelvins(), 1e-10);
        assertEquals(304.8, Altitude.feet(1000).metres(), 1e-10);
        assertEquals(101_325, Pressure.psi(14.695948775513).pascals(), 1e-6);
        assertEquals(3516.8528, CoolingCapacity.btuPerHour(12_000).watts(), 1e-3);
    }

    @Test
    void otherUnitsComeBack() {
        for (double x = -2000; x <= 40_000; x += 7.3) {
            assertEquals(x, Altitude.feet(x).feet(), 1e-9);
            assertEquals(x, Pressure.psi(x).psi(), 1e-9);
            assertEquals(x, CoolingCapacity.btuPerHour(x).btuPerHour(), 1e-9);
            assertEquals(x, RelativeHumidity.percent(x).percent(), 1e-9);
            assertEquals(x, TemperatureDifference.fahrenheit(x).fahrenheit(), 1e-9);
        }
    }

    /** A split of 20 °F is 11.1 K in Celsius, never −6.7. */
    @Test
    void aDifferenceIsNoTemperature() {
        TemperatureDifference split = Temperature.fahrenheit(80).minus(Temperature.fahrenheit(60));
        assertEquals(20, split.fahrenheit(), 1e-10);
        assertEquals("20.0 °F", split.text(UnitSystem.US));
        assertEquals("11.1 °C", split.text(UnitSystem.SI));
        assertEquals(80, Temperature.fahrenheit(60).plus(split).fahrenheit(), 1e-10);
        assertTrue(Temperature.fahrenheit(60).compareTo(Temperature.celsius(20)) < 0);
    }

    @Test
    void everyQuantityHasWords() {
        List<Quantity> all = List.of(Temperature.celsius(20), new TemperatureDifference(11), RelativeHumidity.percent(48.4), new Current(12.08),
                new Current(-0.126), new Voltage(115.6), new Capacitance(43.55), new RunTime(20));
        assertEquals(List.of("68.0 °F", "19.8 °F", "48 %", "12.1 A", "-0.13 A", "116 V", "43.6 µF", "20 min"),
                all.stream().map(quantity -> quantity.text(UnitSystem.US)).toList());
        assertEquals("20.0 °C", Temperature.celsius(20).text(UnitSystem.SI));
    }
}
