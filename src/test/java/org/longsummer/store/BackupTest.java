package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Copies of a record: made while people work, put back, looked over. */
class BackupTest {
    private static final Instant NOW = Instant.parse("2031-06-10T15:00:00Z");
    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

    @TempDir
    Path directory;

    private Path data() {
        return directory.resolve("data");
    }

    private RecordCheck.Report check(Path data) throws IOException {
        return RecordCheck.run(data, CLOCK, unit -> { });
    }

    private void fill(int visits) {
        try (Store store = Store.open(data(), CLOCK)) {
            store.units().save(Samples.unit("u1"));
            store.units().save(Samples.unit("u2"));
            for (int i = 0; i < visits; i++) {
                store.judging().save(Samples.entry("v" + i, "u" + (1 + i % 2), NOW.minus(Duration.ofHours(20L * (visits - i))).toString()));
            }
        }
    }

    private static List<Object> everything(Store store) {
        List<Object> everything = new ArrayList<>(store.units().all());
        store.visits().forEach(everything::add);
        store.verdicts().forEach(verdict -> everything.add(words(verdict)));
        everything.addAll(store.standings().page(YardFilter.ALL, YardOrder.MOST_PRESSING, Optional.empty(), 100).rows());
        everything.addAll(store.depots().all());
        store.judging().verdicts("u1").forEach(verdict -> everything.add(verdict.state() + " " + verdict.probabilityOfImpact()));
        everything.add(store.closings().closedThrough());
        return everything;
    }

    private static List<Object> words(StoredVerdict verdict) {
        return List.of(verdict.visitId(), verdict.state(), verdict.condition(), verdict.probabilityOfImpact(), verdict.expectedSplit(),
                verdict.expectedAmps(), verdict.since(), verdict.closing());
    }

    @Test
    void aRestoredCopyHasTheSameUnitsVisitsVerdictsAndLists() throws IOException {
        fill(8);
        Backup.take(data(), directory.resolve("copies").resolve("copy.sqlite"));
        Backup.restore(directory.resolve("copies").resolve("copy.sqlite"), directory.resolve("again"));
        try (Store first = Store.open(data(), CLOCK); Store again = Store.open(directory.resolve("again"), CLOCK)) {
            assertEquals(everything(first), everything(again));
            assertEquals(26, everything(first).size(), "it was not empty");
        }
        assertEquals(new RecordCheck.Report(2, 8, List.of(), List.of()), check(directory.resolve("again")));
    }

    @Test
    void aCopyMadeWhilePeopleWorkIsWholeAndHoldsWhatWasThereWhenItBegan() throws IOException {
        fill(4);
        AtomicBoolean going = new AtomicBoolean(true);
        AtomicInteger saved = new AtomicInteger(4);
        try (Store store = Store.open(data(), CLOCK)) {
            CompletableFuture<Void> working = CompletableFuture.runAsync(() -> {
                for (int i = 0; going.get(); i++) {
                    assertInstanceOf(Saving.Stored.class, store.judging().save(Samples.entry("w" + i, "u" + (1 + i % 2), NOW.toString())));
                    saved.incrementAndGet();
                }
            });
            for (int copy = 0; copy < 5; copy++) {
                int before = saved.get();
                Backup.take(data(), directory.resolve("copy" + copy));
                int after = saved.get();
                Backup.restore(directory.resolve("copy" + copy), directory.resolve("again" + copy));
                RecordCheck.Report report = check(directory.resolve("again" + copy));
                assertEquals(List.of(), report.faults());
                assertEquals(List.of(), report.differingUnits());
                assertTrue(report.visits() >= before && report.visits() <= after + 1, before + " " + report.visits() + " " + after);
            }
            assertEquals(List.of(), check(data()).faults(), "a record in use can be looked over");
            going.set(false);
            working.join();
        }
    }

    @Test
    void aBackupReplacesNothingAndARestoreNeedsAnEmptyDirectory() throws IOException {
        fill(1);
        Path copy = directory.resolve("copy");
        Backup.take(data(), copy);
        assertSays("a backup replaces nothing", () -> Backup.take(data(), copy));
        assertSays("holds no record", () -> Backup.take(directory.resolve("nowhere"), directory.resolve("x")));
        assertSays("is not empty", () -> Backup.restore(copy, data()));
        assertSays("there is no such file", () -> Backup.restore(directory.resolve("nothing"), directory.resolve("new")));
        Files.writeString(directory.resolve("letter"), "a letter");
        assertSays("is not a record of Longsummer", () -> Backup.restore(directory.resolve("letter"), directory.resolve("new")));
        assertFalse(Files.exists(directory.resolve("new")));
    }

    private static void assertSays(String words, org.junit.jupiter.api.function.Executable doing) {
        String message = assertThrows(StoreRefused.class, doing).getMessage();
        assertTrue(message.contains(words), message);
    }

    @Test
    void whatIsNoRecordOrNewerOrDamagedIsNotPutInPlace() throws IOException {
        fill(6);
        Path copy = directory.resolve("copy");
        Backup.take(data(), copy);
        Path other = directory.resolve("other");
        try (Handle handle = Jdbi.open("jdbc:sqlite:" + other)) {
            handle.execute("create table bird (name text)");
        }
        assertSays("not a record of Longsummer", () -> Backup.restore(other, directory.resolve("new1")));
        Path newer = Files.copy(copy, directory.resolve("newer"));
        try (Handle handle = Jdbi.open("jdbc:sqlite:" + newer)) {
            handle.execute("insert into flyway_schema_history select 99, '99', 'later', type, script, checksum, installed_by, "
                    + "installed_on, execution_time, success from flyway_schema_history where installed_rank = 1");
        }
        assertSays("written by a newer version", () -> Backup.restore(newer, directory.resolve("new2")));
        Path damaged = Files.copy(copy, directory.resolve("damaged"));
        try (RandomAccessFile file = new RandomAccessFile(damaged.toFile(), "rw")) {
            file.setLength(file.length() - 3 * 4096);
        }
        assertSays("damaged", () -> Backup.restore(damaged, directory.resolve("new3")));
        for (String name : List.of("new1", "new2", "new3")) {
            assertFalse(Files.exists(directory.resolve(name).resolve(Store.FILE)), name);
        }
    }

    @Test
    void theCheckSeesWhatIsWrong() throws IOException {
        fill(4);
        assertEquals(new RecordCheck.Report(2, 4, List.of(), List.of()), check(data()));
        change("update verdict set p_impact = p_impact + 0.1 where unit_id = 'u1'");
        assertEquals(List.of("u1"), check(data()).differingUnits());
        change("update standing set state = 'act' where unit_id = 'u2'");
        assertEquals(List.of("u1", "u2"), check(data()).differingUnits());
        try (Store store = Store.open(data(), CLOCK)) {
            List.of("u1", "u2").forEach(store.judging()::judgeAgain);
        }
        assertEquals(new RecordCheck.Report(2, 4, List.of(), List.of()), check(data()));
        change("delete from verdict where visit_id = 'v0'");
        assertEquals(List.of("1 visits that count have no verdict"), check(data()).faults());
        change("update standing set visit_count = 7 where unit_id = 'u2'");
        assertEquals(2, check(data()).faults().size());
        change("delete from unit where id = 'u1'");
        assertTrue(check(data()).faults().toString().contains("refers to a row of unit that is not there"), check(data()).toString());
    }

    private void change(String sql) {
        try (Handle handle = Jdbi.open("jdbc:sqlite:" + data().resolve(Store.FILE))) {
            handle.execute(sql);
        }
    }

    @Test
    void theNewestCopiesAreKeptAndNothingElseIsTouched() throws IOException {
        fill(1);
        Path place = directory.resolve("copies");
        KeptBackups copies = new KeptBackups(place, 3);
        assertEquals(Optional.empty(), copies.newest());
        for (int day = 0; day < 5; day++) {
            copies.take(data(), NOW.plus(Duration.ofDays(day)));
        }
        Files.writeString(place.resolve("notes.txt"), "keep");
        copies.take(data(), NOW.plus(Duration.ofDays(5)));
        assertEquals(List.of("longsummer-20310613T150000Z.sqlite", "longsummer-20310614T150000Z.sqlite", "longsummer-20310615T150000Z.sqlite"),
                copies.copies().stream().map(path -> path.getFileName().toString()).toList());
        assertEquals(Optional.of(NOW.plus(Duration.ofDays(5))), copies.newest());
        assertTrue(Files.exists(place.resolve("notes.txt")));
        Path early = copies.take(data(), NOW.minus(Duration.ofDays(900)));
        assertTrue(Files.exists(early), "the copy just made stays though the clock was set back");
    }
}
