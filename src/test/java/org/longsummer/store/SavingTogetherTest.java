package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.store.FleetUnit.Duty;
import org.sqlite.SQLiteConfig;

/** Many people at once: each write is there or not by itself, and what is stored is what judging in turn would have given. */
class SavingTogetherTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2031-06-10T18:00:00Z"), ZoneOffset.UTC);
    private static final int PEOPLE = 8;
    private static final int VISITS = 12;

    @TempDir
    Path data;
    private Store store;
    private final ExecutorService people = Executors.newFixedThreadPool(PEOPLE + 2);

    @BeforeEach
    void open() {
        store = Store.open(data, CLOCK);
        List.of("u0", "u1", "u2").forEach(id -> store.units().save(Samples.unit(id)));
    }

    @AfterEach
    void close() {
        people.shutdownNow();
        store.close();
    }

    /** Three units only, so that they meet; meanwhile plates, prices and what counts change. */
    @Test
    void whatIsStoredIsWhatTheRecordSaysHoweverTheyMeet() throws Exception {
        List<Future<?>> all = new ArrayList<>();
        for (int person = 0; person < PEOPLE; person++) {
            int one = person;
            all.add(people.submit(() -> IntStream.range(0, VISITS).forEach(i -> {
                String id = "p" + one + "n" + i;
                Entry entry = Samples.entry(id, "u" + (one + i) % 3, "2031-06-%02dT%02d:%02d:00Z".formatted(1 + i % 9, 8 + one, i));
                assertInstanceOf(Saving.Stored.class, store.judging().save(entry));
                if (i % 4 == 3) {
                    store.judging().withdraw(id, "Ines", "to see");
                } else if (i % 4 == 1) {
                    assertInstanceOf(Saving.Stored.class, store.judging().save(Samples.correction(id + "c", id, entry.visit().unitId(),
                            entry.visit().at().toString())));
                }
            })));
        }
        all.add(people.submit(() -> IntStream.range(0, 20).forEach(this::change)));
        for (Future<?> one : all) {
            one.get();
        }
        List<String> stored = stored();
        assertEquals(PEOPLE * VISITS * 3 / 4, stored.stream().filter(line -> line.startsWith("verdict")).count());
        while (store.judging().adviseAgain() > 0) {
            continue;
        }
        List<String> advised = stored();
        List.of("u0", "u1", "u2").forEach(store.judging()::judgeAgain);
        assertEquals(stored(), advised);
        assertEquals(List.of(), RecordCheck.run(data, CLOCK, unit -> { }).differingUnits());
    }

    private void change(int time) {
        FleetUnit unit = store.units().find("u" + time % 3).orElseThrow();
        store.fleet().edit(new FleetUnit(Samples.unit(unit.id()).unit(), "Make " + time, "NB-135", "S" + time, "", "", "", Optional.empty(), Duty.IN_SERVICE),
                new UnitChange.Because("Ada", LocalDate.of(2031, 6, 10), "to see"));
        store.prices().change(PriceScope.FLEET, Map.of(PriceKey.CALL_OUT, Optional.of(50.0 + time)));
    }

    private List<String> stored() {
        List<String> all = new ArrayList<>();
        store.verdicts().forEach(verdict -> all.add("verdict " + verdict.visitId() + " " + verdict.state() + " " + verdict.condition() + " "
                + verdict.probabilityOfImpact() + " " + verdict.severity() + " " + verdict.splitDeparture() + " " + verdict.ampsDeparture()));
        List.of("u0", "u1", "u2").forEach(id -> all.add("standing " + store.standings().ofUnit(id).orElseThrow()));
        return all;
    }

    /** Two visits of one id, sent for two units in the same moment: one is stored, the other one hears of it. */
    @Test
    void anIdIsTakenOnce() throws Exception {
        for (int i = 0; i < 20; i++) {
            String id = "same" + i;
            List<Future<Saving>> both = people.invokeAll(List.<Callable<Saving>>of(
                    () -> store.judging().save(Samples.entry(id, "u0", "2031-06-01T15:00:00Z")),
                    () -> store.judging().save(Samples.entry(id, "u1", "2031-06-01T15:00:00Z"))));
            List<Saving> outcomes = List.of(both.get(0).get(), both.get(1).get());
            assertEquals(1, outcomes.stream().filter(Saving.Stored.class::isInstance).count());
            assertEquals(1, outcomes.stream().filter(Saving.IdTaken.class::isInstance).count());
        }
    }

    /** Of writes that go on disk together, one fails: the others are there, each by whom it was made. */
    @Test
    void oneThatFailsTakesNoOtherWithIt() throws Exception {
        Acting acting = new Acting(CLOCK);
        try (HikariDataSource pool = Pools.pool(Pools.source(data.resolve(Store.FILE), SQLiteConfig.TransactionMode.IMMEDIATE, 1000), 1)) {
            Jdbi writer = Pools.jdbi(pool);
            acting.stamp(writer);
            try (GroupCommit commits = new GroupCommit(writer, acting)) {
                CountDownLatch allWait = new CountDownLatch(1);
                Future<Integer> first = people.submit(() -> commits.write(handle -> waitFor(allWait)));
                List<Future<Integer>> later = IntStream.range(0, 6).mapToObj(i -> people.submit(() -> {
                    acting.begin(new Actor("person " + i, Optional.empty(), "typed"));
                    return commits.write(handle -> i == 3 ? fail(handle) : depot(handle, "Depot " + i));
                })).toList();
                Thread.sleep(200);
                allWait.countDown();
                assertEquals(0, first.get());
                for (int i = 0; i < 6; i++) {
                    Future<Integer> one = later.get(i);
                    if (i == 3) {
                        assertEquals("to see", assertThrows(ExecutionException.class, one::get).getCause().getMessage());
                    } else {
                        assertEquals(1, one.get());
                    }
                }
            }
        }
        assertEquals(List.of("Depot 0", "Depot 1", "Depot 2", "Depot 4", "Depot 5", "Ferrow Flats"),
                store.depots().all().stream().map(Depot::name).toList());
        try (Handle handle = Jdbi.open(RawFile.source(data.resolve(Store.FILE)))) {
            assertEquals(List.of("Depot 0 by person 0", "Depot 1 by person 1", "Depot 2 by person 2", "Depot 4 by person 4", "Depot 5 by person 5"),
                    handle.createQuery("select about_id || ' by ' || who from journal where about = 'depot' and about_id like 'Depot %' order by 1")
                            .mapTo(String.class).list());
            assertEquals(0, handle.createQuery("select count(*) from acting").mapTo(Integer.class).one());
        }
    }

    private static int waitFor(CountDownLatch latch) {
        try {
            latch.await();
            return 0;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static int fail(Handle handle) {
        depot(handle, "Depot 3");
        throw new IllegalStateException("to see");
    }

    private static int depot(Handle handle, String name) {
        return handle.createUpdate("insert into depot (name) values (:name)").bind("name", name).execute();
    }

    /** Whoever comes when the record cannot be taken hears of it. */
    @Test
    void whatCannotBeginFailsForAll() {
        HikariDataSource pool = Pools.pool(Pools.source(data.resolve(Store.FILE), SQLiteConfig.TransactionMode.IMMEDIATE, 1000), 1);
        try (GroupCommit commits = new GroupCommit(Pools.jdbi(pool), new Acting(CLOCK))) {
            pool.close();
            List<CompletableFuture<Integer>> some = IntStream.range(0, 3)
                    .mapToObj(i -> CompletableFuture.supplyAsync(() -> commits.write(handle -> i), people)).toList();
            some.forEach(one -> assertInstanceOf(RuntimeException.class, assertThrows(ExecutionException.class, one::get).getCause()));
        }
    }
}
