package org.longsummer.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Odd forms and files, by a seeded generator: each is taken whole or refused in words, never failed at, never half-stored. */
class OddInputTest {
    private static final int INPUTS = Integer.getInteger("endurance.inputs", Endurance.isLong() ? 1_000_000 : 2_000);
    private static final int ROWS_A_FILE = 190;
    private static final int FORMS_BETWEEN = 10;
    private static final List<String> ODD = List.of("", " ", "abc", "12,,5", "1e5", "1e999", "-", "7.", ".5", "99999999999999999999", "-40", "0", "-0.0",
            "NaN", "Infinity", "½", "\u221212,5", "78 F", "0x1F", "\u0000", "\u202e97", "\u06f7\u06f8", "🥵", "a\nb", "\"", "';drop table visit;--", "<b>",
            "=1+1", "2024-02-29T12:00", "2023-02-29T12:00", "2026-03-08T02:30", "9999-12-31T23:59", "0000-01-01T00:00", "1969-12-31T23:59", "T", "null",
            "true", "[]", "{}", "à".repeat(300), "x".repeat(5_000));
    private static final List<String> COLUMNS = List.of("visit_id", "unit_id", "visited_at", "technician", "return_db_f", "return_rh_pct", "supply_db_f",
            "ambient_db_f", "amps", "volts", "work_done", "notes");

    @TempDir
    Path data;

    private final Random random = new Random(20260601);
    private int stored;
    private int refused;

    @Test
    void eachIsTakenWholeOrRefusedInWords() {
        long start = System.nanoTime();
        try (ServerProcess server = ServerProcess.serving(data)) {
            Caller caller = server.caller();
            List<String> units = new ArrayList<>();
            int done = 0;
            while (done < INPUTS) {
                if (units.isEmpty() || random.nextInt(10) == 0) {
                    units.add(caller.addUnit("Van \u05d3 " + done));
                }
                String unit = units.get(random.nextInt(units.size()));
                for (int i = 0; i < FORMS_BETWEEN; i++) {
                    form(caller, unit, "v" + done++);
                }
                file(caller, unit, "f" + done);
                done += ROWS_A_FILE;
            }
            assertEquals(200, caller.get("/api/yard").status());
            server.kill();
        }
        try (RecordFile file = new RecordFile(data)) {
            assertEquals("", file.faults());
            assertEquals(Integer.toString(stored), file.one("select count(*) from visit"), "what was taken is there, what was refused is not");
        }
        assertTrue(stored > 0 && refused > 0, () -> stored + " stored, " + refused + " refused");
        Endurance.record("Odd input", INPUTS + " odd forms and rows in " + (System.nanoTime() - start) / 1_000_000_000 + " s: " + stored
                + " visits stored, " + refused + " requests refused in words, none failed at");
    }

    private String odd() {
        return ODD.get(random.nextInt(ODD.size()));
    }

    private void form(Caller caller, String unit, String id) {
        Map<String, String> boxes = new LinkedHashMap<>(Caller.soundVisit("2026-07-01T12:00"));
        List<String> names = new ArrayList<>(boxes.keySet());
        for (int i = random.nextInt(3); i >= 0; i--) {
            boxes.put(random.nextInt(8) == 0 ? odd() : names.get(random.nextInt(names.size())), odd());
        }
        Caller.Answer answer = caller.post("/api/units/" + unit + "/visits", Map.of("id", random.nextInt(20) == 0 ? odd() : id, "boxes", boxes));
        stored += answer.status() == 201 ? 1 : 0;
        look(answer, () -> boxes.toString());
    }

    /** Some rows of a file are odd, some files not a row. */
    private void file(Caller caller, String unit, String name) {
        StringBuilder text = new StringBuilder(String.join(",", COLUMNS) + "\n");
        boolean sound = random.nextInt(4) == 0;
        for (int row = 0; row < ROWS_A_FILE; row++) {
            List<String> cells = new ArrayList<>(List.of(name + "r" + row, unit, "2025-07-%02dT13:00:00-06:00".formatted(1 + row % 28), "Otto", "78", "50", "57.5",
                    "92", "12.1", "117", "none", ""));
            if (!sound && random.nextInt(20) == 0) {
                cells.set(random.nextInt(cells.size()), odd());
            }
            text.append(String.join(",", cells)).append('\n');
        }
        Caller.Answer answer = caller.upload(Map.of("visits", text.toString()));
        stored += answer.status() == 200 ? answer.json().path("visits_stored").asInt() : 0;
        look(answer, text::toString);
    }

    /** Every refusal names the field, what was given, what is allowed and what to do. */
    private void look(Caller.Answer answer, java.util.function.Supplier<String> given) {
        assertTrue(answer.status() < 500, () -> answer + " to " + given.get());
        if (answer.status() >= 400) {
            refused++;
            var problems = answer.json().path("problems");
            assertTrue(!problems.isEmpty() && StreamSupport.stream(problems.spliterator(), false).allMatch(problem -> problem.has("field")
                    && problem.has("given") && (problem.has("limit") || problem.has("remedy"))), () -> answer + " to " + given.get());
        }
    }
}
