package org.longsummer.phone;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.NeededKeys;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.wire.ClosingsRecord;
import org.longsummer.wire.JsonWriter;
import org.longsummer.wire.UnitRecord;
import org.longsummer.wire.VisitRecord;

/** What a page asks of the core about one unit: how it is opened, and then one question after another. */
record Questions(String opening, List<Question> questions) {
    static final Instant NOW = Instant.parse("2026-07-02T18:00:00Z");

    /** A call of an opened unit: the name of its method and the argument. */
    record Question(String method, String argument) {}

    /** A form that waits on the phone. */
    record Waiting(String id, Map<String, String> boxes) {}

    static Questions of(Unit unit, List<Visit> visits, List<Waiting> waiting, Closings closings) {
        return new Questions(opening(unit, visits, waiting, needed(unit, visits, closings)), new ArrayList<>());
    }

    /** What a phone is given of the closings for this unit. */
    static Closings needed(Unit unit, List<Visit> visits, Closings closings) {
        LocalDate from = LocalDate.ofEpochDay(NOW.getEpochSecond() / 86_400).minusDays(30);
        NeededKeys keys = new NeededKeys(from);
        keys.add(unit, visits);
        return closings.neededFor(keys, new TreeSet<>(visits.stream().map(Visit::utcDay).toList()), from);
    }

    private static String opening(Unit unit, List<Visit> visits, List<Waiting> waiting, Closings closings) {
        JsonWriter json = new JsonWriter();
        json.object(() -> {
            UnitRecord.write(json.name("unit"), unit);
            json.array("visits", visits, visit -> VisitRecord.write(json, visit));
            json.array("waiting", waiting, form -> json.object(() -> {
                json.field("id", form.id());
                boxes(json, form.boxes());
            }));
            ClosingsRecord.write(json.name("closings"), closings);
            json.field("now_ms", (double) NOW.toEpochMilli());
        });
        return json.toString();
    }

    private static void boxes(JsonWriter json, Map<String, String> boxes) {
        json.object("boxes", () -> boxes.forEach(json::field));
    }

    Questions ask(String method, String system) {
        JsonWriter json = new JsonWriter();
        questions.add(new Question(method, json.object(() -> json.field("system", system)).toString()));
        return this;
    }

    Questions judge(Waiting form, String system) {
        JsonWriter json = new JsonWriter();
        json.object(() -> {
            json.field("id", form.id()).field("system", system).field("saving", true).field("now_ms", (double) NOW.toEpochMilli());
            boxes(json, form.boxes());
        });
        questions.add(new Question("judge", json.toString()));
        return this;
    }

    /** What the core answers here. */
    List<String> answeredByJava() {
        OpenedUnit unit = Door.open(opening);
        return questions.stream().map(question -> switch (question.method()) {
            case "judge" -> unit.judge(question.argument());
            case "verdicts" -> unit.verdicts(question.argument());
            default -> unit.visit(question.argument());
        }).toList();
    }
}
