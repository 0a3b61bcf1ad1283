package org.longsummer.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Store;
import org.longsummer.wire.UnitForm;
import org.longsummer.wire.VerdictView;

/** One unit: its page's data, and adding a new one by its plate. */
final class UnitApi {
    private final Store store;

    UnitApi(Store store) {
        this.store = store;
    }

    /**
     * A unit's page.
     *
     * @param unit plate and place
     * @param state of the last judged visit, or {@code never_judged}
     * @param standing what the last judged visit says; absent when none was ever judged
     * @param toRetake what the last visit says when it is a retake
     * @param visits the whole record in order of time, with what no longer counts
     */
    record UnitPage(UnitView unit, String state, Optional<VerdictView> standing, Optional<VerdictView> toRetake, List<VisitRow> visits) {}

    /** What became of a new unit. */
    record Added(String unitId) {}

    /** A form's texts by the names of its boxes. */
    record Form(Map<String, String> boxes) {}

    void show(Context request) {
        UnitSystem system = Reader.system(request);
        FleetUnit unit = find(store, request.pathParam("unit"));
        List<Verdict> verdicts = store.judging().verdicts(unit.id());
        Optional<Verdict> last = last(verdicts);
        Optional<Verdict> judged = last(verdicts.stream().filter(verdict -> verdict.state() != State.RETAKE).toList());
        request.json(new UnitPage(UnitView.of(unit, system), judged.map(verdict -> verdict.state().word()).orElse("never_judged"),
                judged.map(verdict -> VerdictView.of(verdict, system)),
                last.filter(verdict -> verdict.state() == State.RETAKE).map(verdict -> VerdictView.of(verdict, system)),
                rows(store.visits().record(unit.id()), verdicts, system)));
    }

    void add(Context request) {
        UnitForm form = new UnitForm(Reader.body(request, Form.class).boxes());
        Asking.of(request).refuseBeyond("site", form.depot());
        FleetUnit unit = fleetUnit(form, freeId(form.label()), store.depots().named(form.depot()).flatMap(depot -> depot.altitude()));
        store.units().save(unit);
        request.status(201).json(new Added(unit.id()));
    }

    /** The unit of a form as a fleet keeps it; refused with all problems at once. */
    static FleetUnit fleetUnit(UnitForm form, String id, Optional<Altitude> depotAltitude) {
        FleetUnit unit = new FleetUnit(form.unit(id, depotAltitude), form.text("make"), form.text("model"), form.text("serial"),
                form.text("vehicle"), form.text("roof_position"), form.text("owner"), form.boxes().day("warranty_until"),
                form.boxes().choice("duty", FleetUnit.Duty.class, FleetUnit.Duty.IN_SERVICE));
        Refused.ifAny(form.problems());
        return unit;
    }

    static FleetUnit find(Store store, String unitId) {
        return store.units().find(unitId).orElseThrow(() -> unknown(unitId));
    }

    static Refused unknown(String unitId) {
        return Refused.unknown("unit", unitId, "There is no unit of this name.");
    }

    private static Optional<Verdict> last(List<Verdict> verdicts) {
        return verdicts.isEmpty() ? Optional.empty() : Optional.of(verdicts.get(verdicts.size() - 1));
    }

    private static List<VisitRow> rows(List<RecordedVisit> record, List<Verdict> verdicts, UnitSystem system) {
        Map<String, Verdict> byVisit = verdicts.stream().collect(Collectors.toMap(verdict -> verdict.visit().id(), Function.identity()));
        Map<String, RecordedVisit> byId = record.stream().collect(Collectors.toMap(row -> row.visit().id(), Function.identity()));
        List<VisitRow> rows = new ArrayList<>();
        for (RecordedVisit row : record) {
            rows.add(VisitRow.of(row, Optional.ofNullable(byVisit.get(row.visit().id())), marking(row, byId), system));
        }
        return rows;
    }

    private static Optional<VisitRow.Marking> marking(RecordedVisit row, Map<String, RecordedVisit> byId) {
        if (row.withdrawal().isPresent()) {
            return row.withdrawal().map(w -> new VisitRow.Marking("withdrawn", w.by(), w.at().toString(), w.reason(), ""));
        }
        if (row.correctedBy().isPresent()) {
            return row.correctedBy().map(byId::get).map(by -> new VisitRow.Marking("corrected", by.entry().savedBy(),
                    by.receivedAt().toString(), by.entry().correction().map(c -> c.reason()).orElse(""), by.visit().id()));
        }
        return row.entry().correction().map(correction -> new VisitRow.Marking("correction", row.entry().savedBy(),
                row.receivedAt().toString(), correction.reason(), correction.correctsId()));
    }

    /** The name in lower case with dashes, in any script; with a number when it is taken. */
    private String freeId(String label) {
        String id = label.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        String base = id.isEmpty() ? "unit" : id;
        String free = base;
        for (int number = 2; store.units().find(free).isPresent(); number++) {
            free = base + "-" + number;
        }
        return free;
    }
}
