package org.longsummer.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The server is killed, again and again on the same record, while eight people save visits and a file is imported. What was
 * acknowledged must be there, once; what was not may be there, once; an import is there wholly or not at all.
 */
class CrashTest {
    private static final int ROUNDS = Endurance.rounds(5, 200);
    private static final int WRITERS = 8;
    private static final int LONGEST_IMPORT_MS = 60_000;
    private static final int VISITS_A_FILE = 120;
    private static final int UNITS_A_FILE = 12;

    @TempDir
    Path data;

    private final Set<String> sent = ConcurrentHashMap.newKeySet();
    private final Map<String, Unanswered> unanswered = new ConcurrentHashMap<>();
    private final Set<String> acknowledged = ConcurrentHashMap.newKeySet();
    private final Set<String> filesSent = ConcurrentHashMap.newKeySet();
    private final Set<String> filesAcknowledged = ConcurrentHashMap.newKeySet();
    private final Set<String> surprises = ConcurrentHashMap.newKeySet();

    /** What was sent when the server was killed. */
    private record Unanswered(String unit, String visitedAt) {}

    @Test
    void aDamagedRecordWouldBeSeen() {
        try (ServerProcess server = ServerProcess.serving(data)) {
            String unit = server.caller().addUnit("Van 1");
            assertEquals(201, server.caller().saveVisit(unit, "v1", "2026-07-01T12:00").status());
            server.kill();
        }
        sent.add("v1");
        assertWhole("before");
        acknowledged.add("v2");
        assertThrows(AssertionError.class, () -> assertWhole("one is lost"));
        try (RecordFile file = new RecordFile(data)) {
            file.execute("delete from verdict");
            assertTrue(file.faults().contains("1 visits that count without a verdict"), file::faults);
        }
    }

    @Test
    void nothingAcknowledgedIsLostWhenTheServerIsKilled() {
        Random random = new Random(20260101);
        Set<String> lastAnswered = Set.of();
        for (int round = 0; round < ROUNDS; round++) {
            try (ServerProcess server = ServerProcess.serving(data)) {
                restarted(server.caller(), lastAnswered);
                Set<String> before = Set.copyOf(acknowledged);
                killAmongWork(server, round, 150 + random.nextInt(1_500));
                lastAnswered = new TreeSet<>(acknowledged);
                lastAnswered.removeAll(before);
            }
            assertWhole("round " + round);
        }
        assertEquals(Set.of(), surprises);
        assertTrue(acknowledged.size() > ROUNDS * WRITERS, () -> "hardly anything was saved: " + acknowledged.size());
        assertTrue(!filesAcknowledged.isEmpty() && filesAcknowledged.size() < filesSent.size(),
                () -> "imports: " + filesAcknowledged.size() + " of " + filesSent.size());
        Endurance.record("Killed (`kill -9`) among 8 writers and an import", ROUNDS + " rounds, " + acknowledged.size()
                + " visits acknowledged of " + sent.size() + " sent, " + filesAcknowledged.size() + " files of " + filesSent.size()
                + ": every acknowledged one there once, none half, `PRAGMA integrity_check` ok after each round");
    }

    private void killAmongWork(ServerProcess server, int round, int milliseconds) {
        Caller caller = server.caller();
        List<String> units = new ArrayList<>();
        for (int i = 0; i < WRITERS / 2; i++) {
            units.add(caller.addUnit("Round " + round + " van " + i));
        }
        AtomicBoolean going = new AtomicBoolean(true);
        List<Thread> people = new ArrayList<>();
        for (int writer = 0; writer < WRITERS; writer++) {
            String name = "r" + round + "w" + writer;
            String unit = units.get(writer % units.size());
            people.add(new Thread(() -> writes(server.caller(), unit, name, going)));
        }
        people.add(new Thread(() -> imports(server.caller(), "r" + round, going)));
        people.forEach(Thread::start);
        if (round % 2 == 0) {
            untilAFileIsIn(filesAcknowledged.size());
        }
        ServerProcess.pause(milliseconds);
        server.kill();
        going.set(false);
        people.forEach(CrashTest::join);
    }

    /** So that on a slow machine, too, some files are in and some are cut off. */
    private void untilAFileIsIn(int before) {
        for (int waited = 0; filesAcknowledged.size() == before && waited < LONGEST_IMPORT_MS; waited += 20) {
            ServerProcess.pause(20);
        }
    }

    private void writes(Caller caller, String unit, String name, AtomicBoolean going) {
        for (int i = 0; going.get(); i++) {
            String id = name + "n" + i;
            String visitedAt = Instant.now().toString().substring(0, 19);
            sent.add(id);
            try {
                taken(id, caller.saveVisit(unit, id, visitedAt), Set.of(201));
            } catch (Caller.NoAnswer killed) {
                unanswered.put(id, new Unanswered(unit, visitedAt));
                return;
            }
        }
    }

    private void taken(String id, Caller.Answer answer, Set<Integer> expected) {
        if (expected.contains(answer.status())) {
            acknowledged.add(id);
        } else {
            surprises.add(id + ": " + answer);
        }
    }

    private void imports(Caller caller, String name, AtomicBoolean going) {
        for (int i = 0; going.get(); i++) {
            String file = name + "f" + i;
            filesSent.add(file);
            try {
                Caller.Answer answer = caller.upload(Map.of("units", unitsFile(file), "visits", visitsFile(file)));
                if (answer.status() == 200) {
                    filesAcknowledged.add(file);
                } else {
                    surprises.add(file + ": " + answer);
                }
            } catch (Caller.NoAnswer killed) {
                return;
            }
        }
    }

    private static String unitsFile(String file) {
        StringBuilder text = new StringBuilder("unit_id,label,altitude_ft,nominal_btuh\n");
        for (int i = 0; i < UNITS_A_FILE; i++) {
            text.append(file).append('u').append(i).append(",Imported ").append(i).append(",500,13500\n");
        }
        return text.toString();
    }

    private static String visitsFile(String file) {
        StringBuilder text = new StringBuilder("visit_id,unit_id,visited_at,technician,return_db_f,return_rh_pct,supply_db_f,ambient_db_f,amps\n");
        for (int i = 0; i < VISITS_A_FILE; i++) {
            text.append(file).append('v').append(i).append(',').append(file).append('u').append(i % UNITS_A_FILE).append(",2025-0")
                    .append(5 + i % 4).append("-1").append(i % 10).append("T13:00:00-06:00,").append(file).append(",78,50,57.5,92,12.1\n");
        }
        return text.toString();
    }

    private static void join(Thread person) {
        try {
            person.join();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A visit without an answer is sent again after the restart, as a phone does, and must then be there once like the others. */
    private void restarted(Caller caller, Set<String> lastAnswered) {
        lastAnswered.stream().limit(20).forEach(id -> assertEquals(200, caller.get("/api/visits/" + id).status(), id));
        unanswered.forEach((id, visit) -> taken(id, caller.saveVisit(visit.unit(), id, visit.visitedAt()), Set.of(200, 201)));
        unanswered.clear();
    }

    private void assertWhole(String when) {
        try (RecordFile file = new RecordFile(data)) {
            assertEquals("", file.faults(), when);
            Map<String, Integer> saved = file.counts("select id, count(*) from visit where technician = 'Ines' group by id");
            Set<String> lost = new TreeSet<>(acknowledged);
            lost.removeAll(saved.keySet());
            assertEquals(Set.of(), lost, when);
            assertTrue(sent.containsAll(saved.keySet()), when);
            assertTrue(saved.values().stream().allMatch(times -> times == 1), when);
            Map<String, Integer> imported = file.counts("select technician, count(*) from visit where technician <> 'Ines' group by technician");
            imported.forEach((name, rows) -> assertEquals(VISITS_A_FILE, rows, when + ", file " + name));
            assertTrue(imported.keySet().containsAll(filesAcknowledged), when);
            Map<String, Integer> units = file.counts("select substr(id, 1, instr(id, 'u') - 1), count(*) from unit where label like 'Imported %' group by 1");
            assertEquals(imported.keySet(), units.keySet(), when);
            units.forEach((name, rows) -> assertEquals(UNITS_A_FILE, rows, when + ", units of file " + name));
        }
    }
}
