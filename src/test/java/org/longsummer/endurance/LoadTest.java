package org.longsummer.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** People who save and look, and files that are imported, all at once: nobody is turned away, and what was acknowledged is there. */
class LoadTest {
    private static final int PEOPLE = Integer.getInteger("endurance.people", Endurance.isLong() ? 50 : 8);
    private static final int IMPORTS = Endurance.isLong() ? 4 : 1;
    private static final int SECONDS = Integer.getInteger("endurance.seconds", Endurance.isLong() ? 600 : 10);
    private static final int ROWS = 60;

    @TempDir
    Path data;

    private final Set<String> surprises = ConcurrentHashMap.newKeySet();
    private final Queue<Double> saves = new ConcurrentLinkedQueue<>();
    private final Queue<Double> looks = new ConcurrentLinkedQueue<>();
    private final AtomicInteger files = new AtomicInteger();
    private volatile long end;

    @Test
    void nobodyIsTurnedAway() throws Exception {
        List<Long> memory = new ArrayList<>();
        try (ServerProcess server = ServerProcess.serving(data)) {
            List<String> units = new ArrayList<>();
            for (int i = 0; i < PEOPLE; i++) {
                units.add(server.caller().addUnit("Van " + i));
            }
            end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
            List<Thread> all = new ArrayList<>();
            for (int i = 0; i < PEOPLE; i++) {
                int person = i;
                all.add(new Thread(() -> works(server.caller(), units.get(person), person)));
            }
            for (int i = 0; i < IMPORTS; i++) {
                int importer = i;
                all.add(new Thread(() -> imports(server.caller(), importer)));
            }
            all.forEach(Thread::start);
            while (System.nanoTime() < end) {
                ServerProcess.pause(Math.max(500, SECONDS * 10L));
                memory.add(residentKilobytes(server.id()));
            }
            for (Thread one : all) {
                one.join();
            }
            server.kill();
        }
        assertEquals(Set.of(), surprises);
        assertTrue(saves.size() > PEOPLE && files.get() > 0, () -> saves.size() + " visits, " + files + " files: hardly anything was done");
        try (RecordFile file = new RecordFile(data)) {
            assertEquals("", file.faults());
            assertEquals(Integer.toString(saves.size() + files.get() * ROWS), file.one("select count(*) from visit"), "each acknowledged visit once");
        }
        Endurance.record("People and imports at once", said(memory));
    }

    private String said(List<Long> memory) {
        return String.format(Locale.ROOT, "%d people and %d importing for %d s: %d visits saved (median %.0f ms, 99 of 100 within %.0f ms), %d yards looked at "
                + "(median %.0f ms, 99 of 100 within %.0f ms), %d files of %d visits; no error, no time-out; memory of the process halfway %d MB, at the end %d MB",
                PEOPLE, IMPORTS, SECONDS, saves.size(), quantile(saves, 0.5), quantile(saves, 0.99), looks.size(), quantile(looks, 0.5), quantile(looks, 0.99),
                files.get(), ROWS, memory.get(memory.size() / 2) / 1_000, memory.get(memory.size() - 1) / 1_000);
    }

    private static double quantile(Queue<Double> milliseconds, double share) {
        List<Double> sorted = milliseconds.stream().sorted().toList();
        return sorted.get((int) Math.ceil(share * sorted.size()) - 1);
    }

    /** Where the system does not say, none. */
    private static long residentKilobytes(long process) throws IOException {
        Path status = Path.of("/proc", Long.toString(process), "status");
        return !Files.exists(status) ? 0 : Files.readAllLines(status).stream().filter(line -> line.startsWith("VmRSS:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", ""))).findFirst().orElse(0);
    }

    private void works(Caller caller, String first, int person) {
        String unit = first;
        for (int i = 0; System.nanoTime() < end; i++) {
            int visit = i;
            // A unit that is visited for ever is no unit; each person goes to a new one after some time.
            String at = Instant.parse("2026-05-01T12:00:00Z").plusSeconds(7_200L * i).toString().substring(0, 19);
            String here = i % 20 == 0 && i > 0 ? caller.addUnit("Van " + person + " " + i) : unit;
            timed(saves, 201, () -> caller.saveVisit(here, "p" + person + "n" + visit, at));
            timed(looks, 200, () -> caller.get("/api/yard"));
            unit = here;
        }
    }

    private void imports(Caller caller, int importer) {
        for (int i = 0; System.nanoTime() < end; i++) {
            String name = "f" + importer + "n" + i;
            StringBuilder units = new StringBuilder("unit_id,label,altitude_ft,nominal_btuh\n");
            StringBuilder visits = new StringBuilder("visit_id,unit_id,visited_at,technician,return_db_f,return_rh_pct,supply_db_f,ambient_db_f,amps\n");
            for (int row = 0; row < ROWS; row++) {
                units.append(row % 10 == 0 ? name + "u" + row / 10 + ",Imported,500,13500\n" : "");
                visits.append(name).append('v').append(row).append(',').append(name).append('u').append(row / 10).append(",2025-07-1").append(row % 10)
                        .append("T13:00:00-06:00,Otto,78,50,57.5,92,12.1\n");
            }
            timed(new ConcurrentLinkedQueue<>(), 200, () -> caller.upload(Map.of("units", units.toString(), "visits", visits.toString())));
            files.incrementAndGet();
        }
    }

    private interface Asking {
        Caller.Answer ask();
    }

    private void timed(Queue<Double> milliseconds, int expected, Asking asking) {
        long start = System.nanoTime();
        try {
            Caller.Answer answer = asking.ask();
            milliseconds.add((System.nanoTime() - start) / 1e6);
            if (answer.status() != expected) {
                surprises.add(answer.toString());
            }
        } catch (Caller.NoAnswer e) {
            surprises.add("no answer: " + e.getMessage());
        }
    }
}
