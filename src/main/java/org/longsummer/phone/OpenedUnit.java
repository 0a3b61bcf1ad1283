package org.longsummer.phone;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.Continuation;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.wire.ClosingsRecord;
import org.longsummer.wire.Fields;
import org.longsummer.wire.Json;
import org.longsummer.wire.JsonWriter;
import org.longsummer.wire.UnitRecord;
import org.longsummer.wire.VerdictRecord;
import org.longsummer.wire.VerdictView;
import org.longsummer.wire.VisitBoxes;
import org.longsummer.wire.VisitForm;
import org.longsummer.wire.VisitRecord;
import org.teavm.jso.JSExport;

/** A unit with its history, taken in by {@link Door#open}. */
public final class OpenedUnit {
    private final Unit unit;
    private final Closings closings;
    private final Map<String, Visit> visits = new LinkedHashMap<>();
    private final Map<String, Map<String, String>> typed = new LinkedHashMap<>();
    private String continuedWithout = "";
    private Continuation continuation;

    OpenedUnit(Fields json) {
        unit = UnitRecord.read(json.object("unit"));
        closings = ClosingsRecord.read(json.object("closings"));
        for (Fields visit : json.objects("visits")) {
            visits.put(visit.text("id"), VisitRecord.read(visit, unit.id()));
            typed.put(visit.text("id"), visit.object("typed").texts());
        }
        json.objects("waiting").forEach(form -> takeWaiting(form, moment(json)));
    }

    private void takeWaiting(Fields waiting, Instant now) {
        Map<String, String> boxes = waiting.object("boxes").texts();
        visits.remove(waiting.text("corrects"));
        visits.put(waiting.text("id"), new VisitForm(boxes, now).visit(waiting.text("id"), unit.id(), Optional.empty()));
        typed.put(waiting.text("id"), boxes);
    }

    /**
     * What a form says as it stands.
     *
     * @param json {@code id}, {@code boxes}, {@code system}, {@code now_ms}, perhaps {@code corrects}, and {@code saving} to be told
     *     what stands in the way of saving it
     * @return {@code verdict} and {@code problems}, as the server answers
     */
    @JSExport
    public String judge(String json) {
        Fields asked = Json.object(json);
        VisitForm form = new VisitForm(asked.object("boxes").texts(), moment(asked));
        if (asked.isTrue("saving")) {
            form.askForWhatSavingNeeds(asked.optionalText("corrects").isPresent());
        }
        Visit draft = form.visit(asked.text("id"), unit.id(), Optional.empty());
        Verdict verdict = without(asked.text("id"), asked.text("corrects")).judge(draft);
        JsonWriter answer = new JsonWriter();
        VerdictRecord.draft(answer, Optional.of(VerdictView.of(verdict, system(asked))), form.problems());
        return answer.toString();
    }

    /**
     * What every visit that counts says, in order of time.
     *
     * @param json {@code system}
     * @return an array of verdicts
     */
    @JSExport
    public String verdicts(String json) {
        UnitSystem system = system(Json.object(json));
        JsonWriter answer = new JsonWriter();
        answer.array(Assessment.ofUnit(unit, List.copyOf(visits.values()), closings),
                verdict -> VerdictRecord.write(answer, VerdictView.of(verdict, system)));
        return answer.toString();
    }

    /**
     * A visit as the boxes of its form and as the texts beside them.
     *
     * @param json {@code system}, and {@code id} of the visit; the last one that counts without it
     * @return {@code id}, {@code at}, {@code boxes} and {@code shown}; an empty object when there is none
     */
    @JSExport
    public String visit(String json) {
        Fields asked = Json.object(json);
        UnitSystem system = system(asked);
        JsonWriter answer = new JsonWriter();
        Optional<Visit> found = asked.optionalText("id").map(id -> Optional.ofNullable(visits.get(id)))
                .orElseGet(() -> visits.values().stream().max(Assessment.IN_ORDER));
        answer.object(() -> found.ifPresent(visit -> {
            answer.field("id", visit.id()).field("at", visit.at().atOffset(visit.offset()).withNano(0).toString());
            texts(answer, "boxes", VisitBoxes.texts(visit, system, typed.getOrDefault(visit.id(), Map.of())));
            answer.object("shown", () -> VisitBoxes.shown(visit.readings(), system)
                    .forEach((name, value) -> VerdictRecord.shown(answer, name, Optional.of(value))));
        }));
        return answer.toString();
    }

    private static void texts(JsonWriter json, String name, Map<String, String> texts) {
        json.object(name, () -> texts.forEach(json::field));
    }

    /** The history without the visit that is typed anew, and without the one that it is to correct. */
    private Continuation without(String id, String corrected) {
        String key = id + ' ' + corrected;
        if (continuation == null || !key.equals(continuedWithout)) {
            List<Visit> others = new ArrayList<>(visits.values());
            others.removeIf(visit -> visit.id().equals(id) || visit.id().equals(corrected));
            continuation = new Continuation(unit, others, closings);
            continuedWithout = key;
        }
        return continuation;
    }

    private static Instant moment(Fields json) {
        return Instant.ofEpochMilli((long) json.number("now_ms"));
    }

    private static UnitSystem system(Fields json) {
        return json.text("system").equals("si") ? UnitSystem.SI : UnitSystem.US;
    }
}
