package org.longsummer.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.endurance.ServerProcess.Outcome;

/** The disk is full or closed to writing, another program holds the file, the service is stopped in the middle of its work. */
class DisasterTest {
    private static final String NOON = "2026-07-01T12:00";
    private static final int MOST_VISITS = 2_000;

    @TempDir
    Path directory;

    @Test
    void aFullDiskRefusesInWordsLosesNothingAndGoesOnWhenThereIsRoom() {
        Path data = directory.resolve("disk").resolve("data");
        try (SmallDisk disk = new SmallDisk(directory.resolve("disk")); ServerProcess server = ServerProcess.serving(disk.starter(), data)) {
            Caller caller = server.caller();
            String unit = caller.addUnit("Van 1");
            disk.fill();
            int saved = savedUntilRefused(caller, unit);
            Caller.Answer refusedFile = caller.upload(Map.of("units", "unit_id,label\n" + "u".repeat(60) + ",Van\n"));
            assertTrue(Set.of(503, 507).contains(refusedFile.status()), refusedFile::toString);
            assertEquals(200, caller.get("/api/yard").status(), "what is stored can still be read");
            ServerProcess again = server;
            if (disk.isMounted()) {
                disk.makeRoom();
            } else {
                server.kill();
                again = ServerProcess.serving(data);
            }
            assertEquals(201, again.caller().saveVisit(unit, "afterwards", NOON).status());
            again.kill();
            try (RecordFile file = new RecordFile(data)) {
                assertEquals("", file.faults());
                assertEquals(Integer.toString(saved + 1), file.one("select count(*) from visit"));
                assertEquals("1", file.one("select count(*) from unit"), "the import is wholly out");
            }
            Endurance.record("The disk is full", disk.kind() + ": " + saved + " visits saved, the next refused with words, all there and"
                    + " whole after `kill -9`, saving goes on when there is room");
        }
    }

    private static int savedUntilRefused(Caller caller, String unit) {
        for (int saved = 0; saved < MOST_VISITS; saved++) {
            Caller.Answer answer = caller.saveVisit(unit, "v" + saved, NOON);
            if (answer.status() != 201) {
                assertTrue(Set.of(503, 507).contains(answer.status()), answer::toString);
                assertTrue(answer.text().contains("nothing was changed"), answer::text);
                assertTrue(answer.text().contains("then try again"), answer::text);
                return saved;
            }
        }
        throw new AssertionError("the disk was never full");
    }

    @Test
    void aDirectoryThatCannotBeWrittenIsSaidInWords() {
        try (SmallDisk disk = new SmallDisk(directory.resolve("disk"))) {
            Path data = disk.place().resolve("data");
            try (ServerProcess server = ServerProcess.serving(data)) {
                server.caller().addUnit("Van 1");
                server.terminate();
                server.outcome();
            }
            boolean readOnly = disk.makeReadOnly();
            for (Path place : readOnly ? Set.of(data, disk.place().resolve("new")) : Set.of(Path.of("/proc/longsummer"))) {
                Outcome outcome = ServerProcess.run("serve", "--data", place.toString(), "--port", "0");
                assertEquals(1, outcome.exitCode(), outcome::toString);
                assertTrue(outcome.errors().contains(place.toString()), outcome::errors);
                assertFalse(outcome.errors().contains("Exception"), outcome::errors);
                assertTrue(!readOnly || outcome.errors().contains("cannot be written; nothing was changed."), outcome::errors);
            }
            Endurance.record("The directory cannot be written", (readOnly ? "a disk mounted read-only" : "stand-in, no disk could be mounted: a"
                    + " directory of the system") + ": refused at the start with words, exit code 1");
        }
    }

    @Test
    void aFileLockedByAnotherProgramIsWaitedForAndThenRefusedInWords() {
        Path data = directory.resolve("data");
        try (ServerProcess server = ServerProcess.serving(data); RecordFile other = new RecordFile(data)) {
            Caller caller = server.caller();
            String unit = caller.addUnit("Van 1");
            other.execute("begin exclusive");
            CompletableFuture<Caller.Answer> waiting = CompletableFuture.supplyAsync(() -> caller.saveVisit(unit, "v1", NOON));
            assertEquals(200, caller.get("/api/yard").status(), "reading does not wait");
            ServerProcess.pause(1_500);
            other.execute("rollback");
            assertEquals(201, waiting.join().status(), "a short lock is waited for");

            other.execute("begin exclusive");
            ServerProcess second = ServerProcess.begin("serve", "--data", data.toString(), "--port", "0");
            Caller.Answer refused = caller.saveVisit(unit, "v2", NOON);
            assertEquals(503, refused.status());
            assertTrue(refused.text().contains("Another program holds the record; nothing was changed."), refused::text);
            Outcome outcome = second.outcome();
            assertEquals(1, outcome.exitCode(), outcome::toString);
            assertTrue(outcome.errors().contains("Another program holds the record"), outcome::errors);
            other.execute("rollback");
            assertEquals(201, caller.saveVisit(unit, "v2", NOON).status());
            server.kill();
            assertEquals("", other.faults());
        }
        Endurance.record("The file is locked by another program", "a short lock is waited for, a long one refused with words after 20 s;"
                + " reading goes on");
    }

    @RepeatedTest(3)
    void aServiceThatIsStoppedEndsWhatItBegan(RepetitionInfo round) {
        Path data = directory.resolve("data");
        Set<String> acknowledged = ConcurrentHashMap.newKeySet();
        AtomicInteger surprises = new AtomicInteger();
        try (ServerProcess server = ServerProcess.serving(data)) {
            String unit = server.caller().addUnit("Van 1");
            CompletableFuture<?>[] people = IntStream.range(0, 8).mapToObj(i -> CompletableFuture.runAsync(() ->
                    savesUntilStopped(server.caller(), unit, "w" + i + "n", acknowledged, surprises))).toArray(CompletableFuture<?>[]::new);
            while (acknowledged.size() < 20 * round.getCurrentRepetition()) {
                ServerProcess.pause(10);
            }
            long told = System.nanoTime();
            server.terminate();
            Outcome outcome = server.outcome();
            assertEquals(143, outcome.exitCode(), outcome::toString);
            assertTrue(System.nanoTime() - told < 9e9, "it waited for something that does not come");
            CompletableFuture.allOf(people).join();
            assertEquals(0, surprises.get());
        }
        try (RecordFile file = new RecordFile(data)) {
            assertEquals("", file.faults());
            assertEquals(new TreeSet<>(acknowledged), new TreeSet<>(file.counts("select id, 1 from visit").keySet()),
                    "what was begun was ended and acknowledged");
        }
        Endurance.record("Told to stop (SIGTERM) in the middle of requests", "every visit that was begun was stored and acknowledged");
    }

    private static void savesUntilStopped(Caller caller, String unit, String name, Set<String> acknowledged, AtomicInteger surprises) {
        for (int i = 0; ; i++) {
            try {
                Caller.Answer answer = caller.saveVisit(unit, name + i, NOON);
                if (answer.status() != 201) {
                    surprises.addAndGet(answer.status() == 503 ? 0 : 1);
                    return;
                }
                acknowledged.add(name + i);
            } catch (Caller.NoAnswer stopped) {
                return;
            }
        }
    }

    @Test
    void aFileThatIsNoRecordIsRefusedInWords() throws java.io.IOException {
        Files.writeString(directory.resolve("longsummer.sqlite"), "a letter");
        Outcome outcome = ServerProcess.run("serve", "--data", directory.toString(), "--port", "0");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.errors().contains("is not a record of Longsummer"), outcome::errors);
    }
}
