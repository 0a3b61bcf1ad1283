package org.longsummer.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.NeededKeys;
import org.longsummer.chain.visit.Visit;
import org.longsummer.store.Depot;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Store;
import org.longsummer.wire.ClosingsRecord;
import org.longsummer.wire.JsonWriter;
import org.longsummer.wire.UnitBoxes;
import org.longsummer.wire.UnitRecord;
import org.longsummer.wire.VisitRecord;

/** What a phone keeps of some units so that it can judge them without a signal: their records, and what of the closings that needs. */
final class OfflineRecord {
    /** A visit may be dated back this far and still find the closing of its day. */
    private static final int DAYS_BACK = 45;

    private final Store store;
    private final LocalDate from;
    private final NeededKeys keys;
    private final TreeSet<LocalDate> days = new TreeSet<>();
    private final Map<String, Depot> depots;
    private final long asOf;

    OfflineRecord(Store store, Clock clock) {
        this.store = store;
        this.asOf = clock.millis();
        this.from = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC).minusDays(DAYS_BACK);
        this.keys = new NeededKeys(from);
        this.depots = store.depots().all().stream().collect(Collectors.toMap(Depot::name, depot -> depot));
    }

    /** {@code as_of_ms}, {@code units} and {@code closings}. */
    String json(List<FleetUnit> units) {
        Closings closings = store.judging().learnedUntilYesterday();
        JsonWriter json = new JsonWriter();
        json.object(() -> {
            json.field("as_of_ms", (double) asOf);
            json.array("units", units, unit -> unit(json, unit));
            ClosingsRecord.write(json.name("closings"), closings.neededFor(keys, days, from));
        });
        return json.toString();
    }

    private void unit(JsonWriter json, FleetUnit unit) {
        List<RecordedVisit> counting = store.visits().record(unit.id()).stream().filter(RecordedVisit::counts).toList();
        List<Visit> visits = counting.stream().map(RecordedVisit::visit).toList();
        keys.add(unit.unit(), visits);
        visits.forEach(visit -> days.add(visit.utcDay()));
        json.object(() -> {
            json.field("unit_id", unit.id());
            UnitRecord.write(json.name("unit"), unit.unit());
            json.field("serial", unit.serial()).field("vehicle", unit.vehicle()).field("roof_position", unit.roofPosition())
                    .field("owner", unit.owner()).field("make", unit.make()).field("model", unit.model());
            Depot depot = depots.get(unit.unit().site());
            if (depot != null) {
                json.field("time_zone", depot.timeZone());
            }
            json.object("boxes", () -> boxes(json, unit));
            json.array("visits", counting, row -> json.object(() -> visit(json, row, row == counting.get(counting.size() - 1))));
        });
    }

    private static void boxes(JsonWriter json, FleetUnit unit) {
        UnitBoxes.texts(unit.unit()).forEach(json::field);
        json.field("make", unit.make()).field("model", unit.model()).field("serial", unit.serial()).field("vehicle", unit.vehicle())
                .field("roof_position", unit.roofPosition()).field("owner", unit.owner());
    }

    /** What was typed goes with the last visit only: the next one takes over from it. */
    private static void visit(JsonWriter json, RecordedVisit row, boolean last) {
        VisitRecord.members(json, row.visit());
        if (last) {
            json.object("typed", () -> row.entry().typed().texts().forEach(json::field));
        }
    }
}
