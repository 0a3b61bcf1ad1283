package org.longsummer.chain.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.longsummer.chain.screening.Visits.fahrenheit;
import static org.longsummer.chain.screening.Visits.ordinary;
import static org.longsummer.chain.screening.Visits.screen;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;

/** A mistake in an optional box empties that box and leaves the visit. Common practice, no published source. */
class OptionalReadingsPracticeTest {

    private static void emptied(Mistake mistake, Field field, ReadingsBuilder readings) {
        Screening screening = screen(readings);
        assertFalse(screening.isRetake(), screening::toString);
        assertEquals(1, screening.findings().size(), screening::toString);
        assertEquals(mistake, screening.findings().get(0).mistake());
        assertEquals(field, screening.findings().get(0).field());
        assertTrue(screening.isMistaken(field));
        assertTrue(screening.usable().split().isPresent());
    }

    @ParameterizedTest
    @CsvSource({"0.48, HUMIDITY_IMPOSSIBLE", "3, HUMIDITY_DOUBTFUL", "48, ''", "97, HUMIDITY_DOUBTFUL", "100, HUMIDITY_DOUBTFUL",
            "104, HUMIDITY_IMPOSSIBLE", "480, HUMIDITY_IMPOSSIBLE", "-5, HUMIDITY_IMPOSSIBLE"})
    void relativeHumidity(double percent, String mistake) {
        Screening screening = screen(ordinary().returnMoisture(new Moisture.Relative(RelativeHumidity.percent(percent))));
        assertFalse(screening.isRetake());
        assertEquals(mistake, screening.findings().stream().findFirst().map(f -> f.mistake().name()).orElse(""));
        assertEquals(!mistake.equals("HUMIDITY_IMPOSSIBLE"), screening.usable().returnMoisture().isPresent());
    }

    @ParameterizedTest
    @CsvSource({"66, true", "79, true", "80, false", "19, false", "44, false", "-400, false", "660, false"})
    void wetBulbAtADryBulbOf79(double wetBulb, boolean kept) {
        Screening screening = screen(ordinary().returnMoisture(new Moisture.WetBulb(fahrenheit(wetBulb))));
        assertFalse(screening.isRetake());
        assertEquals(kept, screening.usable().returnMoisture().isPresent(), screening::toString);
    }

    @ParameterizedTest
    @CsvSource({"58, true", "79, true", "80, false", "-30, false", "-500, false"})
    void dewPointAtADryBulbOf79(double dewPoint, boolean kept) {
        Screening screening = screen(ordinary().returnMoisture(new Moisture.DewPoint(fahrenheit(dewPoint))));
        assertFalse(screening.isRetake());
        assertEquals(kept, screening.usable().returnMoisture().isPresent(), screening::toString);
    }

    @Test
    void wetBulbWithoutADryBulbIsKept() {
        ReadingsBuilder amps = new ReadingsBuilder().amps(new Current(12)).returnMoisture(new Moisture.WetBulb(fahrenheit(66)));
        assertTrue(screen(amps).findings().isEmpty());
    }

    @Test
    void outdoorHumidity() {
        emptied(Mistake.HUMIDITY_IMPOSSIBLE, Field.AMBIENT_HUMIDITY, ordinary().ambientHumidity(RelativeHumidity.percent(140)));
        assertTrue(screen(ordinary().ambientHumidity(RelativeHumidity.percent(98))).findings().isEmpty(), "it may rain outdoors");
    }

    /** The first shows 79 °F; two pocket thermometers that differ by 5 °F in the same air are not both right. */
    @ParameterizedTest
    @CsvSource({"79.4, ''", "77, ''", "84, THERMOMETERS_DISAGREE", "74, THERMOMETERS_DISAGREE", "26, CELSIUS_TYPED", "790, DECIMAL_SLIP"})
    void aSecondThermometerBesideTheFirst(double second, String mistake) {
        Screening screening = screen(ordinary().returnSecondDryBulb(fahrenheit(second)));
        assertFalse(screening.isRetake());
        assertEquals(mistake, screening.findings().stream().findFirst().map(f -> f.mistake().name()).orElse(""));
        assertTrue(screening.usable().split().isPresent(), "which of the two is off, nobody knows");
    }

    @Test
    void otherThermometers() {
        emptied(Mistake.CELSIUS_TYPED, Field.ROOM_DRY_BULB, ordinary().roomDryBulb(fahrenheit(27)));
        emptied(Mistake.DECIMAL_SLIP, Field.CONDENSER_ENTERING, ordinary().condenserEntering(fahrenheit(960)));
        emptied(Mistake.IMPOSSIBLE, Field.CONDENSER_LEAVING, ordinary().condenserLeaving(fahrenheit(480)));
        assertTrue(screen(ordinary().roomDryBulb(fahrenheit(80)).condenserEntering(fahrenheit(96)).condenserLeaving(fahrenheit(121))).findings().isEmpty());
    }

    @Test
    void otherMeters() {
        emptied(Mistake.IMPOSSIBLE, Field.FAN_ONLY_AMPS, ordinary().fanOnlyAmps(new Current(13)));
        emptied(Mistake.IMPOSSIBLE, Field.FAN_ONLY_AMPS, ordinary().fanOnlyAmps(new Current(0.1)));
        emptied(Mistake.IMPOSSIBLE, Field.START_PEAK, ordinary().startPeak(new Current(9)));
        emptied(Mistake.IMPOSSIBLE, Field.CAPACITOR, ordinary().capacitor(new Capacitance(0)));
        emptied(Mistake.IMPOSSIBLE, Field.CAPACITOR, ordinary().capacitor(new Capacitance(450)));
        assertTrue(screen(ordinary().fanOnlyAmps(new Current(2.8)).startPeak(new Current(61)).capacitor(new Capacitance(43.5))).findings().isEmpty());
    }
}
