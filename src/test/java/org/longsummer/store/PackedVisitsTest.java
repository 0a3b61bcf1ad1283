package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.files.Findings;
import org.longsummer.files.VisitsFile;
import org.longsummer.quantity.Voltage;

class PackedVisitsTest {
    private static final Path VISITS = Path.of("src/test/resources/fleet-dev/visits.csv");

    @Test
    void whatIsPackedComesBackExactly() throws IOException {
        List<Visit> visits = new ArrayList<>(List.of(with(Readings.NONE, Instruments.DEFAULT, Set.of(), ""),
                with(moist(new Moisture.WetBulb(Temperature.fahrenheit(65.43))), odd(), EnumSet.allOf(Work.class), "n\"ö\n𝄞"),
                with(moist(new Moisture.DewPoint(Temperature.celsius(-0.1))), Instruments.DEFAULT, Set.of(Work.UNIT_REPLACED), "x".repeat(100_000))));
        VisitsFile.read(VISITS, id -> true, new Findings(), visits::add);
        try (PackedVisits packed = new PackedVisits()) {
            visits.forEach(visit -> packed.add(visit));
            assertEquals(visits.size(), packed.count());
            for (int row = 0; row < visits.size(); row++) {
                assertEquals(visits.get(row), packed.visit(row));
                assertEquals(visits.get(row).utcDay(), packed.day(row));
            }
        }
    }

    private static Readings moist(Moisture moisture) {
        return new ReadingsBuilder().returnMoisture(moisture).amps(new Current(0.1)).build();
    }

    private static Instruments odd() {
        return new Instruments(TemperatureDifference.fahrenheit(0.3), TemperatureDifference.fahrenheit(2), RelativeHumidity.percent(2), 0.02,
                new Current(0.1), new Voltage(2), true);
    }

    private static Visit with(Readings readings, Instruments instruments, Set<Work> works, String notes) {
        return new Visit("id", "U1", Instant.parse("1969-12-31T23:59:59.999999999Z"), ZoneOffset.ofHoursMinutes(-3, -30), "Ines",
                instruments, readings, FanSpeed.LOW, PowerSource.INVERTER, FilterLook.MISSING, CoilLook.HEAVY, true, works, notes);
    }

    @Test
    void rowsAreSortedByUnitAndDayWithoutMixingEquals() throws IOException {
        Random chance = new Random(5);
        try (PackedVisits packed = new PackedVisits()) {
            for (int i = 0; i < 5000; i++) {
                packed.add(new Visit("v" + i, "u" + chance.nextInt(37), Instant.ofEpochSecond(chance.nextInt(2_000_000) - 1_000_000), ZoneOffset.UTC, "",
                        Instruments.DEFAULT, Readings.NONE, FanSpeed.HIGH, PowerSource.SHORE, FilterLook.CLEAN, CoilLook.CLEAN, false,
                        Set.of(), ""));
            }
            int[] byUnit = packed.byUnit();
            assertArrayEquals(IntStream.range(0, 5000).boxed().sorted(Comparator.comparing(row -> packed.visit(row).unitId())).mapToInt(i -> i).toArray(), byUnit);
            assertArrayEquals(IntStream.of(byUnit).boxed().sorted(Comparator.comparing(packed::day)).mapToInt(i -> i).toArray(),
                    packed.byDay(byUnit));
        }
    }
}
