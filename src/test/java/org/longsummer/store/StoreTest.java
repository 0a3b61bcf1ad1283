package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.visit.Visit;

/** On a real file in a directory of its own. */
class StoreTest {
    private static final LocalDate TODAY = LocalDate.of(2031, 6, 20);
    private static final YardDays DAYS = new YardDays(TODAY, Optional.empty(), TODAY.plusDays(120));
    private static final Instant NOW = Instant.parse("2031-06-10T15:00:00.123Z");

    @TempDir
    Path directory;

    private Store open() {
        return Store.open(directory.resolve("fleet"), Clock.fixed(NOW, ZoneOffset.UTC));
    }

    @Test
    void anEmptyDirectoryBecomesAnEmptyRecord() {
        try (Store store = open()) {
            assertEquals(0, store.units().count());
            assertEquals(List.of(), store.standings().page(YardFilter.ALL, YardOrder.MOST_PRESSING, Optional.empty(), 50).rows());
            assertEquals(new YardCounts(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0), store.standings().counts(YardFilter.ALL, DAYS));
        }
        assertTrue(Files.exists(directory.resolve("fleet").resolve(Store.FILE)));
    }

    @Test
    void whatWasSavedIsThereAfterARestartExactlyAsItWas() {
        Entry entry = Samples.entry("v1", "u1", "2031-06-10T14:00:00Z");
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            assertInstanceOf(Saving.Stored.class, store.judging().save(entry));
        }
        try (Store store = open()) {
            assertEquals(Optional.of(Samples.unit("u1")), store.units().find("u1"));
            assertEquals(List.of(entry.visit()), store.visits().current("u1"));
            assertEquals(List.of(new RecordedVisit(entry, NOW, Optional.empty(), Optional.empty())), store.visits().record("u1"));
            assertEquals(1, store.standings().ofUnit("u1").orElseThrow().visitCount());
            assertEquals("v1", store.verdicts().ofUnit("u1").get(0).visitId());
        }
    }

    @Test
    void theSameVisitSavedTwiceIsStoredOnceAndItSaysSo() {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            store.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z"));
            assertInstanceOf(Saving.AlreadyStored.class, store.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z")));
            assertInstanceOf(Saving.IdTaken.class, store.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:05:00Z")));
            assertEquals(1, store.visits().count());
        }
    }

    @Test
    void aCorrectionIsANewRowAndTheOldOneStaysMarked() {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            store.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z"));
            Entry correction = Samples.correction("v2", "v1", "u1", "2031-06-10T14:01:00Z");
            assertInstanceOf(Saving.Stored.class, store.judging().save(correction));
            assertEquals(List.of("v2"), store.visits().current("u1").stream().map(Visit::id).toList());
            RecordedVisit old = store.visits().find("v1").orElseThrow();
            assertEquals(Optional.of("v2"), old.correctedBy());
            assertEquals(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z"), old.entry());
            assertEquals(correction, store.visits().find("v2").orElseThrow().entry());
            assertEquals(1, store.standings().ofUnit("u1").orElseThrow().visitCount());
        }
    }

    @Test
    void aSecondCorrectionOfTheSameVisitIsShownNotSwallowed() {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            store.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z"));
            store.judging().save(Samples.correction("v2", "v1", "u1", "2031-06-10T14:01:00Z"));
            Saving second = store.judging().save(Samples.correction("v3", "v1", "u1", "2031-06-10T14:02:00Z"));
            assertEquals(Optional.of("v2"), assertInstanceOf(Saving.NoLongerCounts.class, second).stored().correctedBy());
            assertEquals(2, store.visits().count());
        }
    }

    @Test
    void aCorrectionMayNotReachAnotherUnitsVisit() {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            store.units().save(Samples.unit("u2"));
            store.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z"));
            assertInstanceOf(Saving.UnknownVisit.class,
                    store.judging().save(Samples.correction("v2", "v1", "u2", "2031-06-10T14:01:00Z")));
        }
    }

    @Test
    void aWithdrawalMarksTheVisitWithWhoWhenAndWhy() {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            store.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z"));
            assertEquals(Judging.Withdrawing.WITHDRAWN, store.judging().withdraw("v1", "otto", "wrong unit"));
            assertEquals(Judging.Withdrawing.NO_LONGER_COUNTED, store.judging().withdraw("v1", "otto", "again"));
            assertEquals(Judging.Withdrawing.UNKNOWN_VISIT, store.judging().withdraw("v9", "otto", "what"));
            assertEquals(List.of(), store.visits().current("u1"));
            assertEquals(Optional.of(new Withdrawal("otto", NOW, "wrong unit")), store.visits().record("u1").get(0).withdrawal());
            Standing standing = store.standings().ofUnit("u1").orElseThrow();
            assertEquals(0, standing.visitCount());
            assertTrue(standing.judged().isEmpty());
            assertEquals(List.of(), store.verdicts().ofUnit("u1"));
        }
    }

    @Test
    void aVisitOfAnUnknownUnitIsNotStored() {
        try (Store store = open()) {
            assertEquals(new Saving.UnknownUnit("u9"), store.judging().save(Samples.entry("v1", "u9", "2031-06-10T14:00:00Z")));
            assertEquals(0, store.visits().count());
        }
    }

    @Test
    void aSerialIsFoundThoughItsLettersLookLikeDigits() {
        try (Store store = open()) {
            store.units().save(Samples.unit("7"));
            assertEquals(List.of(Samples.unit("7")), store.units().withSerialLike("50151 7"));
            assertEquals(1, store.standings().count(YardFilter.ALL.containing("5o1-51")));
            assertEquals(0, store.standings().count(YardFilter.ALL.containing("100%")));
        }
    }

    @Test
    void aLateVisitIsLearnedFromAtTheFirstClosingThatIsStillOpen() {
        LocalDate today = LocalDate.of(2031, 6, 10);
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            store.judging().save(Samples.entry("intime", "u1", "2031-06-10T14:00:00Z"));
            assertEquals(Optional.of(today.minusDays(1)), store.closings().closedThrough());
            store.judging().save(Samples.entry("late", "u1", "2031-06-05T14:00:00Z"));
            assertEquals(Optional.empty(), store.verdicts().ofVisit("intime").orElseThrow().closing());
        }
        try (Store store = Store.open(directory.resolve("fleet"), Clock.fixed(NOW.plus(2, ChronoUnit.DAYS), ZoneOffset.UTC))) {
            store.judging().save(Samples.entry("next", "u1", "2031-06-12T14:00:00Z"));
            assertEquals(Optional.of(today.plusDays(1)), store.closings().closedThrough());
            assertEquals(Optional.of(today), store.verdicts().ofVisit("next").orElseThrow().closing(),
                    "the late one taught nothing before the day it arrived");
            assertEquals(Optional.of(today), store.closings().all().lastBefore(today.plusDays(5)));
        }
        try (Store store = open()) {
            assertEquals(Optional.of(today), store.closings().all().lastBefore(today.plusDays(5)), "kept over a restart");
        }
    }

    @Test
    void theFileItselfRefusesToForget() throws SQLException {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            store.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z"));
            store.judging().save(Samples.entry("v2", "u1", "2031-06-10T14:30:00Z"));
            store.judging().withdraw("v1", "otto", "wrong unit");
        }
        try (Store store = Store.open(directory.resolve("fleet"), Clock.fixed(NOW.plus(1, ChronoUnit.DAYS), ZoneOffset.UTC))) {
            store.judging().judgeAgain("u1");
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + directory.resolve("fleet").resolve(Store.FILE));
                Statement statement = connection.createStatement()) {
            for (String change : new String[] {"update visit set amps_a = 9", "delete from visit", "update withdrawal set reason = ''",
                "delete from withdrawal", "update closing set numbers = '2'", "delete from closing"}) {
                assertTrue(assertThrows(SQLException.class, () -> statement.execute(change)).getMessage().contains("append-only"), change);
            }
        }
    }

    @Test
    void aRecordOfANewerVersionIsRefusedAndLeftAlone() throws SQLException {
        open().close();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + directory.resolve("fleet").resolve(Store.FILE));
                Statement statement = connection.createStatement()) {
            statement.execute("insert into flyway_schema_history select 99, '99', 'later', type, script, checksum, installed_by, "
                    + "installed_on, execution_time, success from flyway_schema_history where installed_rank = 1");
        }
        assertTrue(assertThrows(StoreRefused.class, this::open).getMessage().contains("newer version"));
    }

    @Test
    void aFileThatIsNoRecordIsRefusedAndLeftAlone() throws IOException {
        Path file = Files.createDirectories(directory.resolve("fleet")).resolve(Store.FILE);
        Files.writeString(file, "this is a letter");
        assertTrue(assertThrows(StoreRefused.class, this::open).getMessage().contains("not a record"));
        assertEquals("this is a letter", Files.readString(file));
    }

    @Test
    void daysThatAnotherProgramClosedAreKnown() {
        try (Store serving = open()) {
            serving.units().save(Samples.unit("u1"));
            serving.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z"));
            Clock tomorrow = Clock.fixed(NOW.plus(1, ChronoUnit.DAYS), ZoneOffset.UTC);
            try (Store other = Store.open(directory.resolve("fleet"), tomorrow)) {
                other.judging().save(Samples.entry("v2", "u1", "2031-06-11T14:00:00Z"));
            }
            assertInstanceOf(Saving.Stored.class, serving.judging().save(Samples.entry("v3", "u1", "2031-06-11T14:30:00Z")));
            assertEquals(Optional.of(LocalDate.of(2031, 6, 10)), serving.verdicts().ofVisit("v3").orElseThrow().closing());
        }
    }

    @Test
    void manyWritersAtOnceLoseNothing() throws InterruptedException, ExecutionException {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            ExecutorService writers = Executors.newFixedThreadPool(8);
            List<Future<Saving>> savings = new ArrayList<>();
            for (int i = 0; i < 80; i++) {
                String id = "v" + i;
                savings.add(writers.submit(() -> store.judging().save(Samples.entry(id, "u1", "2031-06-10T14:00:00Z"))));
            }
            for (Future<Saving> saving : savings) {
                assertInstanceOf(Saving.Stored.class, saving.get());
            }
            writers.shutdown();
            assertEquals(80, store.standings().ofUnit("u1").orElseThrow().visitCount());
            assertEquals(80, store.verdicts().ofUnit("u1").size());
        }
    }

    @Test
    void theYardNarrowsCountsAndPages() {
        try (Store store = open()) {
            for (int i = 10; i < 30; i++) {
                store.units().save(Samples.unit("u" + i));
            }
            store.judging().save(Samples.entry("v1", "u10", "2031-06-10T14:00:00Z"));
            State state = store.standings().ofUnit("u10").orElseThrow().judged().orElseThrow().state();
            YardCounts counts = store.standings().counts(YardFilter.ALL.inDepot("Ferrow Flats"), DAYS);
            assertEquals(new YardCounts(20, state == State.ACT ? 1 : 0, state == State.DRIFTING ? 1 : 0, state == State.STEADY ? 1 : 0,
                    19, 0, 19, 20, 0, 0, 0, 0, 0), counts, "nineteen were never visited, one is to be read again after work");
            assertEquals(0, store.standings().count(YardFilter.ALL.inDepot("Lake Orrin")));
            assertEquals(19, store.standings().count(YardFilter.ALL.onlyNeverJudged()));
            assertEquals(1, store.standings().count(YardFilter.ALL.inState(state)));
            List<String> pressing = store.standings().page(YardFilter.ALL, YardOrder.MOST_PRESSING, Optional.empty(), 20).rows().stream()
                    .map(Standing::unitId).toList();
            assertEquals(state == State.STEADY ? 19 : 0, pressing.indexOf("u10"), "never judged comes before steady and after the rest");
            YardPage five = store.standings().page(YardFilter.ALL, YardOrder.LABEL, Optional.empty(), 5);
            YardPage two = store.standings().page(YardFilter.ALL, YardOrder.LABEL, five.next(), 2);
            assertEquals(List.of("u15", "u16"), two.rows().stream().map(Standing::unitId).toList());
        }
    }
}
