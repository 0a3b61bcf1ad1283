package org.longsummer.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Altitude;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Store;

class DemoFleetTest {
    private static final Path STORED = Path.of("demo-data");

    @TempDir
    Path directory;

    @Test
    void theStoredFilesAreWhatTheCommandWrites() throws IOException {
        DemoFleet.write(directory);
        for (String file : new String[] {DemoFleet.UNITS, DemoFleet.VISITS}) {
            assertEquals(Files.readString(STORED.resolve(file)), Files.readString(directory.resolve(file)), file);
        }
    }

    @Test
    void everyFaultAndEverySlipIsInIt() {
        Set<Fault> faults = new HashSet<>();
        Set<Slip> slips = new HashSet<>();
        java.util.stream.Stream.of(DemoUnits.FERROW_STORIES, DemoUnits.ORRIN_STORIES, DemoUnits.SALTMARCH_STORIES)
                .flatMap(java.util.List::stream).forEach(story -> {
                    faults.add(story.fault());
                    slips.addAll(story.slips().values());
                });
        assertEquals(Set.of(Fault.values()), faults);
        assertEquals(new HashSet<>(Arrays.asList(Slip.values())), slips);
    }

    @Test
    void itFillsAnEmptyStoreOnceAndGoesInOneStep() {
        try (Store store = Store.open(directory)) {
            assertTrue(DemoFleet.load(store));
            assertFalse(DemoFleet.load(store));
            assertTrue(store.demo().isThere());
            assertEquals(40, store.units().count());
            assertEquals(0, store.standings().ofUnit("FF-16").orElseThrow().visitCount());
            assertTrue(store.depots().all().stream().allMatch(depot -> depot.timeZone().isPresent()));
            assertTrue(store.demo().remove());
            assertEquals(0, store.units().count());
            assertEquals(0, store.visits().count());
            assertFalse(store.demo().isThere());
            assertTrue(DemoFleet.load(store));
        }
    }

    @Test
    void itsLastSeasonIsTheLastOneThatIsOver() {
        for (String now : new String[] {"2031-09-30T12:00:00Z", "2031-10-01T12:00:00Z"}) {
            try (Store store = Store.open(directory.resolve(now.substring(0, 10)), Clock.fixed(Instant.parse(now), ZoneOffset.UTC))) {
                assertTrue(DemoFleet.load(store));
                Instant last = store.standings().ofUnit("FF-01").orElseThrow().lastVisitAt().orElseThrow();
                assertEquals(now.startsWith("2031-10") ? 2031 : 2030, last.atOffset(ZoneOffset.UTC).getYear());
            }
        }
    }

    @Test
    void itNeverMixesWithAFleetOfOnesOwn() {
        try (Store store = Store.open(directory)) {
            store.units().save(FleetUnit.of(new Unit("1", "mine", "", Plate.UNREAD, AirDelivery.UNKNOWN, java.util.Optional.empty(),
                    Altitude.SEA_LEVEL)));
            assertFalse(DemoFleet.load(store));
            assertFalse(store.demo().remove());
            assertEquals(1, store.units().count());
        }
    }

    @Test
    void aLargeFleetHasAsManyRowsAsAskedFor() throws IOException {
        LargeFleet.write(directory, 30, 10);
        assertEquals(31, Files.readAllLines(directory.resolve(DemoFleet.UNITS)).size());
        assertEquals(301, Files.readAllLines(directory.resolve(DemoFleet.VISITS)).size());
    }
}
