package org.longsummer.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.endurance.ServerProcess.Outcome;
import org.longsummer.store.Store;

/** The commands of whoever runs it, as processes, on a record that is being served. */
class OperationTest {
    @TempDir
    Path directory;

    @Test
    void aServedRecordIsCopiedLookedOverAndMoved() throws IOException {
        Path data = directory.resolve("data");
        Path copies = directory.resolve("copies");
        String copy = directory.resolve("copy.sqlite").toString();
        String yard;
        String unit;
        try (ServerProcess server = ServerProcess.serving(data, "--backup-dir", copies.toString(), "--backup-every", "1", "--backup-keep", "2")) {
            Caller caller = server.caller();
            String id = caller.addUnit("Van 1");
            for (int i = 0; i < 3; i++) {
                assertEquals(201, caller.saveVisit(id, "v" + i, "2026-07-0" + (i + 1) + "T12:00").status());
            }
            said(0, "was read back whole", ServerProcess.run("backup", "--data", data.toString(), "--out", copy));
            said(1, "is there already", ServerProcess.run("backup", "--data", data.toString(), "--out", copy));
            said(0, "The record is whole: 1 units, 3 visits, every verdict as this version judges it.",
                    ServerProcess.run("check", "--data", data.toString()));
            said(1, "is not empty", ServerProcess.run("restore", "--in", copy, "--data", data.toString()));
            assertEquals("{\"status\":\"ok\",\"troubles\":[]}", caller.get("/health").text());
            yard = caller.get("/api/yard").text();
            unit = caller.get("/api/units/" + id).text();
            server.terminate();
            server.outcome();
        }
        try (Stream<Path> files = Files.list(copies)) {
            assertEquals(1, files.count(), "a copy was made at the start");
        }
        Path moved = directory.resolve("moved");
        said(0, "is the record of " + moved, ServerProcess.run("restore", "--in", copy, "--data", moved.toString()));
        try (ServerProcess server = ServerProcess.serving(moved)) {
            assertEquals(yard, server.caller().get("/api/yard").text());
            assertEquals(unit, server.caller().get("/api/units/van-1").text());
        }
    }

    private static void said(int exitCode, String words, Outcome outcome) {
        assertEquals(exitCode, outcome.exitCode(), outcome::toString);
        assertTrue((exitCode == 0 ? outcome.output() : outcome.errors()).contains(words), outcome::toString);
    }

    @Test
    void aRecordOfANewerVersionIsRefusedWithWordsAndLeftAlone() throws IOException {
        Path data = directory.resolve("data");
        Store.open(data).close();
        try (RecordFile file = new RecordFile(data)) {
            file.execute("insert into flyway_schema_history select 99, '99', 'later', type, script, checksum, installed_by, "
                    + "installed_on, execution_time, success from flyway_schema_history where installed_rank = 1");
        }
        byte[] before = Files.readAllBytes(data.resolve(Store.FILE));
        for (List<String> command : List.of(List.of("serve", "--data", data.toString(), "--port", "0"), List.of("check", "--data", data.toString()),
                List.of("export", "--data", data.toString(), "--out", directory.resolve("out").toString()))) {
            Outcome outcome = ServerProcess.run(command.toArray(String[]::new));
            said(1, "written by a newer version of Longsummer; use that version, or restore a backup made with this one.", outcome);
            assertFalse(outcome.errors().contains("Exception"), outcome::errors);
        }
        assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(data.resolve(Store.FILE))));
    }

    /** What a log may hold is a promise to the people whose readings these are. */
    @Test
    void theLogIsOneJsonObjectALineAndSaysNothingOfPeopleOrReadings() throws IOException {
        try (ServerProcess server = ServerProcess.serving(directory.resolve("data"))) {
            Caller caller = server.caller();
            String id = caller.addUnit("Heronry 7 of Mrs Quillfeather");
            assertEquals(201, caller.saveVisit(id, "visit-4711", "2026-07-01T12:00").status());
            assertEquals(404, caller.get("/api/units/nobody-of-note").status());
            assertEquals(200, caller.get("/api/yard?text=quillfeather").status());
            try (RecordFile file = new RecordFile(directory.resolve("data"))) {
                file.execute("drop table standing");
            }
            assertEquals(500, caller.saveVisit(id, "visit-4712", "2026-07-01T12:30").status());
            server.terminate();
            Outcome outcome = server.outcome();
            List<String> lines = outcome.output().lines().toList();
            assertTrue(lines.get(0).startsWith("Longsummer is ready at "), outcome::output);
            List<String> events = lines.subList(1, lines.size()).stream().map(line -> new Caller.Answer(0, line).json().path("event").asText()).toList();
            assertTrue(events.containsAll(List.of("ready", "request", "failed", "stopping", "stopped")), events::toString);
            assertTrue(outcome.output().contains("\"route\":\"/api/units/{unit}/visits\",\"status\":500"), outcome::output);
            for (String secret : List.of("uillfeather", "4711", "4712", "nobody", "57.5", "12.1", "Ines", "78.0", "287.3")) {
                assertFalse((outcome.output() + outcome.errors()).replaceAll("\"(at|ms)\":[^,}]*", "").contains(secret), () -> secret + " in " + outcome);
            }
        }
    }
}
