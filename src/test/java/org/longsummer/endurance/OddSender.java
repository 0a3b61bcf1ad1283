package org.longsummer.endurance;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.StreamSupport;

/** Somebody who sends odd forms of visits and odd files, drawn from a seed of his own, and looks at what is answered. */
final class OddSender {
    private static final int ROWS_A_FILE = 190;
    private static final int FORMS_A_ROUND = 10;
    static final int INPUTS_A_ROUND = FORMS_A_ROUND + ROWS_A_FILE;
    private static final List<String> ODD = List.of("", " ", "abc", "12,,5", "1e5", "1e999", "-", "7.", ".5", "99999999999999999999", "-40", "0", "-0.0",
            "NaN", "Infinity", "½", "\u221212,5", "78 F", "0x1F", "\u0000", "\u202e97", "\u06f7\u06f8", "\ud83e\udd75", "\ud83e", "a\nb", "\"", "';drop table visit;--",
            "<b>", "=1+1", "2024-02-29T12:00", "2023-02-29T12:00", "2026-03-08T02:30", "2026-11-01T01:30", "9999-12-31T23:59", "0000-01-01T00:00",
            "1969-12-31T23:59", "T", "null", "true", "[]", "{}", "\u00e0".repeat(300), "x".repeat(5_000));
    private static final List<String> COLUMNS = List.of("visit_id", "unit_id", "visited_at", "technician", "return_db_f", "return_rh_pct", "supply_db_f",
            "ambient_db_f", "amps", "volts", "work_done", "notes");

    private final Caller caller;
    private final String name;
    private final Random random;
    private int sent;
    private int stored;
    private int refused;

    OddSender(Caller caller, int number) {
        this.caller = caller;
        this.name = "s" + number + "n";
        this.random = new Random(20260601 + number);
    }

    /** Forms and rows sent. */
    int sent() {
        return sent;
    }

    /** Visits that were acknowledged. */
    int stored() {
        return stored;
    }

    /** Requests that were refused. */
    int refused() {
        return refused;
    }

    /** So many rounds of some forms and a file; a unit is kept for two rounds, so that its history stays one of a unit. */
    void send(int rounds) {
        String unit = "";
        for (int round = 0; round < rounds; round++) {
            if (round % 2 == 0) {
                unit = caller.addUnit("Van \u05d3 " + name + round);
            }
            for (int i = 0; i < FORMS_A_ROUND; i++) {
                form(unit, name + "v" + sent++);
            }
            file(unit, name + "f" + sent);
            sent += ROWS_A_FILE;
        }
    }

    private String odd() {
        return ODD.get(random.nextInt(ODD.size()));
    }

    private void form(String unit, String id) {
        Map<String, String> boxes = new LinkedHashMap<>(Caller.soundVisit("2026-07-01T12:00"));
        List<String> names = new ArrayList<>(boxes.keySet());
        for (int i = random.nextInt(3); i >= 0; i--) {
            boxes.put(random.nextInt(8) == 0 ? odd() : names.get(random.nextInt(names.size())), odd());
        }
        Caller.Answer answer = caller.post("/api/units/" + unit + "/visits", Map.of("id", random.nextInt(20) == 0 ? odd() : id, "boxes", boxes));
        stored += answer.status() == 201 ? 1 : 0;
        look(answer, boxes::toString);
    }

    /** Some rows of a file are odd, some files not a row. */
    private void file(String unit, String file) {
        StringBuilder text = new StringBuilder(String.join(",", COLUMNS) + "\n");
        boolean sound = random.nextInt(4) == 0;
        for (int row = 0; row < ROWS_A_FILE; row++) {
            List<String> cells = new ArrayList<>(List.of(file + "r" + row, unit, "2025-07-%02dT13:00:00-06:00".formatted(1 + row % 28), "Otto", "78", "50",
                    "57.5", "92", "12.1", "117", "none", ""));
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
    private void look(Caller.Answer answer, Supplier<String> given) {
        assertTrue(answer.status() < 500, () -> answer + " to " + given.get());
        if (answer.status() >= 400) {
            refused++;
            var problems = answer.json().path("problems");
            assertTrue(!problems.isEmpty() && StreamSupport.stream(problems.spliterator(), false).allMatch(problem -> problem.has("field")
                    && problem.has("given") && problem.has("limit") && problem.has("remedy")), () -> answer + " to " + given.get());
        }
    }
}
