package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.files.Findings;
import org.longsummer.files.UnitsFile;
import org.longsummer.files.VisitsFile;

/** What was judged before the record was held is what judging it row by row would have said, whatever others did meanwhile. */
class TakingInTest {
    private static final Path FLEET = Path.of("src/test/resources/fleet-dev");
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2031-06-05T18:00:00Z"), ZoneOffset.UTC);
    private static final Clock TOMORROW = Clock.fixed(Instant.parse("2031-06-06T18:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path directory;

    private final Map<String, FleetUnit> units = new LinkedHashMap<>();
    private final List<Entry> entries = new ArrayList<>();
    private final Map<String, Integer> steps = new HashMap<>();

    @BeforeEach
    void read() throws IOException {
        units.putAll(UnitsFile.read(FLEET.resolve("units.csv"), id -> Optional.empty(), new Findings()));
        VisitsFile.readEntries(FLEET.resolve("visits.csv"), units::containsKey, "", new Findings(), entries::add);
    }

    private Path data(String name) {
        return directory.resolve(name);
    }

    private Intake.Report bring(Store store, List<Entry> visits, Runnable whenJudged) throws IOException {
        return bring(store, units, visits, whenJudged);
    }

    private Intake.Report bring(Store store, Map<String, FleetUnit> described, List<Entry> visits, Runnable whenJudged) throws IOException {
        boolean[] heard = new boolean[1];
        try (PackedVisits packed = new PackedVisits()) {
            visits.forEach(packed::add);
            return store.judging().takeIn(new Brought(List.of(), described, packed), rest -> { }, (what, count) -> {
                steps.merge(what, count, Integer::sum);
                if (what.equals("visits judged") && !heard[0]) {
                    heard[0] = true;
                    whenJudged.run();
                }
            });
        }
    }

    private void bringRowByRow(Store store, List<Entry> visits) {
        store.judging().takeIn(intake -> {
            units.values().forEach(intake::unit);
            visits.forEach(intake::visit);
        }, unit -> { });
    }

    private static void nothing() {}

    /** Rows as text; of visits, in whatever order they were written. */
    private List<String> rows(Path data, String table, String order) {
        return Jdbi.create("jdbc:sqlite:" + data.resolve(Store.FILE)).withHandle(handle -> handle
                .createQuery("select * from " + table + " order by " + order).mapToMap().map(Object::toString).list());
    }

    private void assertSame(Path one, Path other) {
        Map.of("verdict", "visit_id", "standing", "unit_id", "closing", "generation, day, learned_key", "visit", "id", "setting", "name")
                .forEach((table, order) -> assertEquals(rows(one, table, order), rows(other, table, order), table));
    }

    private void assertWhole(Path data) throws IOException {
        RecordCheck.Report report = RecordCheck.run(data, CLOCK, unit -> { });
        assertEquals(List.of(), report.faults());
        assertEquals(List.of(), report.differingUnits());
    }

    @Test
    void aFirstHistoryIsStoredAsRowByRow() throws IOException {
        try (Store ahead = Store.open(data("ahead"), CLOCK); Store rows = Store.open(data("rows"), CLOCK)) {
            assertEquals(1329, bring(ahead, entries, TakingInTest::nothing).visitsStored());
            bringRowByRow(rows, entries);
        }
        assertEquals(Map.of("visits learned from", 1329, "visits judged", 1329, "visits stored", 1329, "verdicts stored", 1329), steps);
        assertSame(data("ahead"), data("rows"));
        assertTrue(rows(data("ahead"), "closing", "day").size() > 300, "days were closed");
    }

    @Test
    void aHistoryBroughtAfterOtherVisitsIsStoredAsRowByRow() throws IOException {
        List<Entry> some = entries.subList(0, 200);
        try (Store ahead = Store.open(data("ahead"), CLOCK); Store rows = Store.open(data("rows"), CLOCK)) {
            for (Store store : List.of(ahead, rows)) {
                bringRowByRow(store, some);
            }
            Intake.Report report = bring(ahead, entries, TakingInTest::nothing);
            assertEquals("1129 200", report.visitsStored() + " " + report.visitsAlreadyStored());
            bringRowByRow(rows, entries);
        }
        assertEquals(1329, steps.get("verdicts stored"), "all are judged by what is learned anew");
        assertSame(data("ahead"), data("rows"));
        assertWhole(data("ahead"));
    }

    @Test
    void moreOfAKnownFleetIsStoredAsRowByRow() throws IOException {
        List<Entry> late = moved(entries.subList(0, 1100));
        try (Store ahead = Store.open(data("ahead"), CLOCK); Store rows = Store.open(data("rows"), CLOCK)) {
            for (Store store : List.of(ahead, rows)) {
                bringRowByRow(store, entries);
                store.judging().withdraw(entries.get(3).visit().id(), "Ines", "read on another unit");
            }
            bring(ahead, late, TakingInTest::nothing);
            bringRowByRow(rows, late);
        }
        assertTrue(steps.get("verdicts stored") > 1100 && !steps.containsKey("visits learned from"), steps::toString);
        assertSame(data("ahead"), data("rows"));
        assertWhole(data("ahead"));
        try (Store ahead = Store.open(data("ahead"), TOMORROW); Store rows = Store.open(data("rows"), TOMORROW)) {
            ahead.judging().learnedUntilYesterday();
            rows.judging().learnedUntilYesterday();
        }
        assertSame(data("ahead"), data("rows"));
    }

    /** The same visits under other ids, an hour later. */
    private static List<Entry> moved(List<Entry> some) {
        return some.stream().map(entry -> Entry.of(Samples.later(entry.visit(), "L" + entry.visit().id()), entry.typed(), "")).toList();
    }

    @Test
    void aUnitThatGotAVisitOrWasChangedMeanwhileIsJudgedAgain() throws IOException {
        try (Store store = Store.open(data("ahead"), CLOCK)) {
            bringRowByRow(store, List.of());
            bring(store, Map.of(), entries, () -> {
                assertInstanceOf(Saving.Stored.class, store.judging().save(Samples.entry("meanwhile", "U003", "2031-06-05T15:00:00Z")));
                store.units().save(Samples.unit("U005"));
            });
            assertEquals(1330, store.visits().count());
            assertEquals(store.visits().current("U003").size(), store.verdicts().ofUnit("U003").size());
        }
        assertTrue(steps.get("verdicts stored") < 1329 && steps.get("units judged") >= 1, steps::toString);
        assertWhole(data("ahead"));
    }

    @Test
    void aVisitOfAnEarlierDayThatWasSavedMeanwhileIsLearnedFrom() throws IOException {
        try (Store store = Store.open(data("ahead"), CLOCK)) {
            bringRowByRow(store, List.of());
            bring(store, entries, () -> store.judging().save(Samples.entry("meanwhile", "U003", "2031-05-30T15:00:00Z")));
            assertEquals(1330, store.visits().count());
        }
        assertEquals(2 * 1329 + 1, steps.get("visits judged"), "all were judged again before the record was held again");
        assertWhole(data("ahead"));
    }

    @Test
    void anIdThatWasTakenMeanwhileRefusesAll() throws IOException {
        try (Store store = Store.open(data("ahead"), CLOCK)) {
            bringRowByRow(store, List.of());
            Intake.Report report = bring(store, entries, () -> store.judging().save(Samples.entry(entries.get(7).visit().id(), "U003", "2031-06-05T15:00:00Z")));
            assertEquals(List.of(entries.get(7).visit().id()), report.idsTaken());
            assertEquals(1, store.visits().count());
        }
        assertWhole(data("ahead"));
    }
}
