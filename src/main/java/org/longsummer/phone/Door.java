package org.longsummer.phone;

import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Altitude;
import org.longsummer.wire.Fields;
import org.longsummer.wire.Json;
import org.longsummer.wire.JsonWriter;
import org.longsummer.wire.UnitForm;
import org.longsummer.wire.UnitRecord;
import org.longsummer.wire.VerdictRecord;
import org.teavm.jso.JSExport;

/** What a page may ask of the core; every argument and every answer is JSON. */
public final class Door {
    private Door() {}

    /** A module without anything to run by itself; what JavaScript may call is exported. */
    public static void main(String[] arguments) {
        // nothing happens before a page asks
    }

    /**
     * Takes a unit in, to judge its visits.
     *
     * @param json {@code unit} and {@code visits} as records, {@code waiting} forms that are not yet on the server with {@code id},
     *     {@code boxes} and perhaps {@code corrects}, {@code closings}, and {@code now_ms}
     */
    @JSExport
    public static OpenedUnit open(String json) {
        return new OpenedUnit(Json.object(json));
    }

    /**
     * Reads the form of a new unit.
     *
     * @param json {@code id}, {@code boxes} and perhaps {@code depot_altitude_m}
     * @return the {@code unit} as a record, and {@code problems}
     */
    @JSExport
    public static String newUnit(String json) {
        Fields asked = Json.object(json);
        UnitForm form = new UnitForm(asked.object("boxes").texts());
        Unit unit = form.unit(asked.text("id"), asked.quantity("depot_altitude_m", Altitude::new));
        for (String box : new String[] {"make", "model", "serial", "vehicle", "roof_position", "owner"}) {
            form.text(box);
        }
        form.boxes().day("warranty_until");
        JsonWriter answer = new JsonWriter();
        answer.object(() -> {
            UnitRecord.write(answer.name("unit"), unit);
            VerdictRecord.problems(answer, form.problems());
        });
        return answer.toString();
    }
}
