package org.longsummer.web;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.store.Depot;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Store;
import org.longsummer.wire.Problem;
import org.longsummer.wire.UnitForm;

/** What a phone takes along to where there is no signal, and units that it brings back; the code on a unit's sticker. */
final class OfflineApi {
    /** A phone holds this many units with their histories in some 50 MB. */
    private static final int MOST_UNITS = 3_000;
    private static final String ID = "[\\p{L}\\p{N}_-]{1,80}";

    private final Store store;
    private final Clock clock;

    OfflineApi(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** A depot that can be taken along; the empty name stands for units without one. */
    record DepotView(String name, int units, Optional<Double> altitudeM, Optional<String> timeZone) {}

    /** A new unit's form; {@code known} says that its serial was looked at and it is another machine. */
    record NewUnit(Map<String, String> boxes, boolean known) {}

    /** What became of a new unit. */
    record Added(String unitId, boolean storedBefore) {}

    /** A unit with a serial that looks the same is there. */
    record Twin(List<Problem> problems, String unitId, String label) {}

    void depots(Context request) {
        Map<String, Integer> counts = store.units().countByDepot();
        Asking asking = Asking.of(request);
        request.json(counts.entrySet().stream().filter(entry -> asking.sees(entry.getKey())).map(entry -> {
            Optional<Depot> depot = store.depots().named(entry.getKey());
            return new DepotView(entry.getKey(), entry.getValue(), depot.flatMap(Depot::altitude).map(altitude -> altitude.metres()),
                    depot.flatMap(Depot::timeZone).map(Object::toString));
        }).toList());
    }

    void fleet(Context request) {
        List<FleetUnit> units = store.units().ofDepots(request.queryParams("depot").stream().filter(Asking.of(request)::sees).toList());
        if (units.size() > MOST_UNITS) {
            throw new Refused(422, List.of(new Problem("depot", String.valueOf(units.size()), "A phone takes at most " + MOST_UNITS
                    + " units along.", "Choose fewer depots.")));
        }
        answer(request, units);
    }

    void unit(Context request) {
        answer(request, List.of(UnitApi.find(store, request.pathParam("unit"))));
    }

    private void answer(Context request, List<FleetUnit> units) {
        request.contentType("application/json").result(new OfflineRecord(store, clock).json(units));
    }

    /** Adds a unit under the id that the phone gave it; a second time changes nothing. */
    void addUnit(Context request) {
        String id = request.pathParam("unit");
        if (!id.matches(ID)) {
            throw new Refused(422, List.of(new Problem("id", id, "A unit needs an id of letters, digits and dashes.", "Make one and send it again.")));
        }
        NewUnit asked = Reader.body(request, NewUnit.class);
        UnitForm form = new UnitForm(asked.boxes());
        FleetUnit unit = UnitApi.fleetUnit(form, id, store.depots().named(form.depot()).flatMap(Depot::altitude));
        Asking.of(request).refuseBeyond("site", form.depot());
        if (store.units().find(id).isPresent()) {
            request.json(new Added(id, true));
            return;
        }
        Optional<FleetUnit> twin = asked.known() || unit.serial().isBlank() ? Optional.empty()
                : store.units().withSerialLike(unit.serial()).stream().filter(like -> Asking.of(request).sees(like.unit().site())).findFirst();
        if (twin.isPresent()) {
            request.status(409).json(new Twin(List.of(new Problem("serial", unit.serial(), "A unit with this serial is there already: "
                    + twin.get().unit().label() + ".", "Say whether it is the same machine.")), twin.get().id(), twin.get().unit().label()));
            return;
        }
        store.units().save(unit);
        request.status(201).json(new Added(id, false));
    }

    /** The address on a sticker: a phone's camera opens the visit page of the unit. */
    void openSticker(Context request) {
        request.redirect("../visit/?unit=" + URLEncoder.encode(request.pathParam("unit"), StandardCharsets.UTF_8));
    }

    /** The sticker's code, with the address by which the page that shows it was reached. */
    void sticker(Context request) {
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        String scheme = "https".equals(request.queryParam("scheme")) ? "https" : "http";
        String address = scheme + "://" + request.host() + request.contextPath() + "/u/" + URLEncoder.encode(unit.id(), StandardCharsets.UTF_8).replace("+", "%20");
        request.contentType("image/svg+xml").result(Sticker.svg(address));
    }
}
