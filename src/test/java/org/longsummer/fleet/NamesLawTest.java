package org.longsummer.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Temperature;

/** What things are called, and in which degrees they were read, changes no verdict. */
class NamesLawTest {
    private static SimulatedFleet fleet;
    private static Map<String, VerdictFigures> verdicts;

    @BeforeAll
    static void judge() {
        fleet = SimulatedFleet.dev();
        verdicts = VerdictFigures.of(fleet.judged());
    }

    private static Visit changed(Visit v, String unitId, String technician, Readings readings) {
        return new Visit(v.id(), unitId, v.at(), v.offset(), technician, v.instruments(), readings, v.fanSpeed(), v.powerSource(),
                v.filter(), v.coil(), v.icedCoil(), v.workDone(), v.notes());
    }

    @Test
    void namesOfUnitsPlacesAndPeople() {
        Random random = new Random(3);
        Map<String, String> names = new HashMap<>();
        Map<String, Unit> units = new TreeMap<>();
        fleet.units().forEach((id, u) -> {
            names.put(id, "other-" + random.nextInt(1_000_000) + id);
            units.put(names.get(id), new Unit(names.get(id), "label " + random.nextInt(), "at " + u.site(), u.plate(), u.delivery(),
                    u.installedOn(), u.altitude()));
        });
        List<Visit> visits = fleet.visits().stream().map(v -> changed(v, names.get(v.unitId()),
                v.technician().isEmpty() ? "" : "by " + v.technician(), v.readings())).toList();
        assertEquals(verdicts, VerdictFigures.of(new SimulatedFleet(units, visits, fleet.truth()).judged()));
    }

    /** Typed in degrees Celsius with as many decimals as a billionth of a degree needs. */
    @Test
    void celsiusOrFahrenheit() {
        SimulatedFleet celsius = fleet.with(v -> changed(v, v.unitId(), v.technician(), inCelsius(v.readings())));
        VerdictFigures.of(celsius.judged()).forEach((id, figures) -> {
            double distance = figures.distance(verdicts.get(id));
            assertTrue(distance < 1e-6, id + " moved by " + distance);
        });
    }

    private static Temperature inCelsius(Temperature t) {
        return Temperature.celsius(Math.round(t.celsius() * 1e9) / 1e9);
    }

    private static Readings inCelsius(Readings r) {
        ReadingsBuilder builder = new ReadingsBuilder(r);
        r.returnDryBulb().map(NamesLawTest::inCelsius).ifPresent((Temperature t) -> builder.returnDryBulb(t));
        r.supplyDryBulb().map(NamesLawTest::inCelsius).ifPresent((Temperature t) -> builder.supplyDryBulb(t));
        r.ambientDryBulb().map(NamesLawTest::inCelsius).ifPresent((Temperature t) -> builder.ambientDryBulb(t));
        r.roomDryBulb().map(NamesLawTest::inCelsius).ifPresent((Temperature t) -> builder.roomDryBulb(t));
        r.condenserLeaving().map(NamesLawTest::inCelsius).ifPresent((Temperature t) -> builder.condenserLeaving(t));
        r.condenserEntering().map(NamesLawTest::inCelsius).ifPresent((Temperature t) -> builder.condenserEntering(t));
        return builder.build();
    }

    /** A split is a difference: it does not take part in the scale's offset. */
    @Test
    void aSplitIsNoTemperature() {
        Readings readings = fleet.visits().get(0).readings();
        double fahrenheit = readings.returnDryBulb().orElseThrow().fahrenheit() - readings.supplyDryBulb().orElseThrow().fahrenheit();
        double celsius = readings.returnDryBulb().orElseThrow().celsius() - readings.supplyDryBulb().orElseThrow().celsius();
        assertEquals(Optional.of(fahrenheit).map(f -> f / 1.8).orElseThrow(), celsius, 1e-9);
        assertEquals(celsius, readings.split().orElseThrow().kelvins(), 1e-9);
    }
}
