package org.longsummer.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.store.Depot;
import org.longsummer.store.Fleet.Place;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.FleetUnit.Duty;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Store;
import org.longsummer.store.UnitChange.Because;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.UnitForm;

/** What becomes of units: changed, moved, mixed up and put right, replaced. Each time who, when and why are recorded. */
final class FleetApi {
    private static final int LONGEST = 120;

    private final Store store;

    FleetApi(Store store) {
        this.store = store;
    }

    /** The unit's form as it stands, with the depots to choose from and the units it may be mixed up with. */
    record EditPage(UnitView unit, Map<String, String> boxes, List<String> depots, List<Neighbour> neighbours) {}

    /** A unit on the same vehicle or at the same depot. */
    record Neighbour(String id, String label, String serial, boolean sameVehicle) {}

    /** The unit to be looked at now. */
    record Done(String unitId) {}

    void form(Context request) {
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        var system = Reader.system(request);
        request.json(new EditPage(UnitView.of(unit, system), UnitTexts.of(unit, system),
                store.depots().all(Asking.of(request).reach()).stream().map(Depot::name).toList(), neighbours(unit, Asking.of(request))));
    }

    private List<Neighbour> neighbours(FleetUnit unit, Asking asking) {
        return store.units().neighbours(unit).stream().filter(other -> asking.sees(other.unit().site())).map(other -> new Neighbour(other.id(), other.unit().label(), other.serial(),
                !unit.vehicle().isEmpty() && other.vehicle().equals(unit.vehicle()))).toList();
    }

    void edit(Context request) {
        FleetUnit before = UnitApi.find(store, request.pathParam("unit"));
        UnitForm form = new UnitForm(Reader.body(request, UnitApi.Form.class).boxes());
        Because because = BecauseForm.of(request, form.boxes(), store, before, false);
        Asking.of(request).refuseBeyond("site", form.depot());
        FleetUnit after = UnitApi.fleetUnit(form, before.id(), store.depots().named(form.depot()).flatMap(Depot::altitude));
        store.fleet().edit(after.with(after.unit().by(before.unit().clock())), because);
        request.json(new Done(before.id()));
    }

    void move(Context request) {
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        Boxes boxes = boxes(request);
        Because because = BecauseForm.of(request, boxes, store, unit, false);
        Place place = new Place(boxes.text("label", LONGEST), boxes.text("site", LONGEST), boxes.text("vehicle", LONGEST),
                boxes.text("roof_position", LONGEST));
        if (place.label().isEmpty()) {
            boxes.refuse("label", "A unit needs a name.", "Type what you call it in its new place.");
        }
        Refused.ifAny(boxes.problems());
        Asking.of(request).refuseBeyond("site", place.depot());
        store.fleet().move(unit.id(), place, because);
        request.json(new Done(unit.id()));
    }

    void swap(Context request) {
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        Boxes boxes = boxes(request);
        Because because = BecauseForm.of(request, boxes, store, unit, false);
        Optional<FleetUnit> other = other(request, boxes, unit);
        String what = boxes.text("what", 20);
        if (!List.of("places", "plates").contains(what)) {
            boxes.refuse("what", "Either places or plates are exchanged.", "Choose one of them.");
        }
        Refused.ifAny(boxes.problems());
        if (what.equals("places")) {
            store.fleet().swapPlaces(unit.id(), other.orElseThrow().id(), because);
        } else {
            store.fleet().swapPlates(unit.id(), other.orElseThrow().id(), because);
        }
        request.json(new Done(unit.id()));
    }

    private Optional<FleetUnit> other(Context request, Boxes boxes, FleetUnit unit) {
        Optional<FleetUnit> other = boxes.text("other_unit").flatMap(store.units()::find)
                .filter(found -> !found.id().equals(unit.id()) && Asking.of(request).sees(found.unit().site()));
        if (other.isEmpty()) {
            boxes.refuse("other_unit", "Another unit belongs here.", "Choose the unit that it was mixed up with.");
        }
        return other;
    }

    void replace(Context request) {
        FleetUnit old = UnitApi.find(store, request.pathParam("unit"));
        UnitForm form = new UnitForm(Reader.body(request, UnitApi.Form.class).boxes());
        Because because = BecauseForm.of(request, form.boxes(), store, old, false);
        String oldLabel = form.boxes().text("old_label").orElse(old.unit().label() + " until " + because.on());
        Duty oldDuty = form.boxes().choice("old_duty", Duty.class, Duty.OUT_OF_SERVICE);
        if (oldDuty == Duty.IN_SERVICE) {
            form.boxes().refuse("old_duty", "A machine that was taken off is not in service there.", "Choose out of service, or sold.");
        }
        Asking.of(request).refuseBeyond("site", form.depot());
        FleetUnit added = UnitApi.fleetUnit(form, UnitApi.freeId(store, form.label()), Optional.of(old.unit().altitude()));
        store.fleet().replace(old.id(), added, oldLabel, oldDuty, because);
        request.status(201).json(new Done(added.id()));
    }

    /** A visit that was another unit's: {@code other_unit}, {@code new_id}, who and why. */
    void giveVisit(Context request) {
        RecordedVisit visit = store.visits().find(request.pathParam("visit"))
                .orElseThrow(() -> Refused.unknown("visit", request.pathParam("visit"), "There is no visit of this id."));
        FleetUnit unit = UnitApi.find(store, visit.visit().unitId());
        Boxes boxes = boxes(request);
        Because because = BecauseForm.of(request, boxes, store, unit, true);
        Optional<FleetUnit> other = other(request, boxes, unit);
        String newId = boxes.text("new_id").orElse("");
        if (!newId.matches("[A-Za-z0-9_-]{1,64}")) {
            boxes.refuse("new_id", "The visit needs a new id of letters and digits.", "Make one.");
        }
        Refused.ifAny(boxes.problems());
        if (!store.fleet().giveVisit(visit.visit().id(), other.orElseThrow().id(), newId, because)) {
            throw Refused.conflict("visit", visit.visit().id(), "This visit was corrected or withdrawn meanwhile.",
                    "Look at the unit's record.");
        }
        request.json(new Done(other.orElseThrow().id()));
    }

    private static Boxes boxes(Context request) {
        Map<String, String> texts = Reader.body(request, UnitApi.Form.class).boxes();
        return new Boxes(texts == null ? Map.of() : texts);
    }
}
