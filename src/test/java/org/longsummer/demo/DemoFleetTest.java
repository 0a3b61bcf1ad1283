package org.longsummer.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.access.Reach;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Altitude;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.UnitsFile;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Standing;
import org.longsummer.store.Store;
import org.longsummer.store.UnitChange;
import org.longsummer.store.YardCounts;
import org.longsummer.store.YardDays;
import org.longsummer.store.YardFilter;

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
                .flatMap(List::stream).forEach(story -> {
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
            assertEquals(41, store.units().count());
            assertEquals(0, store.standings().ofUnit("FF-16").orElseThrow().visitCount());
            assertTrue(store.depots().all().stream().allMatch(depot -> depot.timeZone().isPresent()));
            assertTrue(store.demo().remove());
            assertEquals(0, store.units().count());
            assertEquals(0, store.visits().count());
            assertFalse(store.demo().isThere());
            assertTrue(DemoFleet.load(store));
        }
    }

    /** What the pages show of it: a few units of each state, so that none of them is without an example. */
    @Test
    void atItsEndEveryStateIsThereAndAnOfficeHasDoneItsPart() {
        try (Store store = Store.open(directory)) {
            assertTrue(DemoFleet.load(store));
            LocalDate today = LocalDate.now(ZoneOffset.UTC);
            YardCounts counts = store.standings().counts(YardFilter.ALL, new YardDays(today, Optional.empty(), today));
            assertEquals(List.of(40, 5, 3, 31, 1, 1), List.of(counts.units(), counts.act(), counts.drifting(), counts.steady(),
                    counts.neverJudged(), counts.toRetake()));
            assertEquals(List.of(1, 1), List.of(counts.outOfService(), counts.workPlanned()));
            assertEquals(List.of(UnitChange.Kind.REPLACED), kinds(store, "FF-05"));
            assertEquals(List.of(UnitChange.Kind.TOOK_PLACE), kinds(store, "FF-17"));
            assertEquals(List.of(UnitChange.Kind.MOVED), kinds(store, "SP-10"));
            assertTrue(store.quotes().of("LO-04").isPresent());
            assertEquals("Ferrow Rentals", store.business().read().name());
        }
    }

    /** The yard's limit date is the one on the unit's page, and only units that drift or worse have one. */
    @Test
    void theYardsLimitDateIsThatOfTheUnitsPage() {
        Clock clock = Clock.fixed(Instant.parse("2025-11-01T12:00:00Z"), ZoneOffset.UTC);
        try (Store store = Store.open(directory, clock)) {
            assertTrue(DemoFleet.load(store));
            while (store.judging().adviseAgain() > 0) {
                // until none is left
            }
            int dated = 0;
            for (Standing standing : store.standings().ofUnits(List.of("LO-07", "LO-11", "SP-03", "FF-03"), Reach.EVERYWHERE)) {
                FleetUnit unit = store.units().find(standing.unitId()).orElseThrow();
                Optional<LocalDate> limit = standing.advised().orElseThrow().limitOn();
                boolean steady = standing.judged().orElseThrow().state() == State.STEADY;
                assertEquals(steady ? Optional.empty() : store.ahead().of(unit, store.judging().verdicts(unit.id()), LocalDate.of(2025, 11, 1), false)
                        .outlook().likelyLimit(), limit, unit.id());
                dated += limit.isPresent() ? 1 : 0;
            }
            assertTrue(dated > 0, "no unit of the demo shows a limit date");
        }
    }

    private static List<UnitChange.Kind> kinds(Store store, String unitId) {
        return store.changes().ofUnit(unitId).stream().map(UnitChange::kind).toList();
    }

    /** The files list every unit as the demo's record does. */
    @Test
    void theFilesListTheUnitsAsTheyAreAtTheEnd() throws IOException, FileRefused {
        try (Store store = Store.open(directory.resolve("store"), Clock.fixed(Instant.parse("2025-11-01T12:00:00Z"), ZoneOffset.UTC))) {
            assertTrue(DemoFleet.load(store));
            Map<String, FleetUnit> listed = UnitsFile.read(STORED.resolve(DemoFleet.UNITS), id -> Optional.empty(), new Findings());
            for (String id : List.of("FF-05", "FF-17", "SP-10", "SP-03")) {
                FleetUnit unit = store.units().find(id).orElseThrow();
                FleetUnit file = listed.get(id);
                assertEquals(List.of(unit.unit().label(), unit.vehicle(), unit.roofPosition(), unit.duty(), unit.serial(), unit.unit().installedOn()),
                        List.of(file.unit().label(), file.vehicle(), file.roofPosition(), file.duty(), file.serial(), file.unit().installedOn()));
            }
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
            store.units().save(FleetUnit.of(new Unit("1", "mine", "", Plate.UNREAD, AirDelivery.UNKNOWN, Optional.empty(),
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
