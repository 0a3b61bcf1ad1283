package org.longsummer.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.season.Climate;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.Depot;
import org.longsummer.store.Store;
import org.longsummer.store.UnitChange.Because;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Shown;

/** The places where vehicles stand: altitude, time zone, and how much units run there over the year. */
final class DepotApi {
    private final Store store;

    DepotApi(Store store) {
        this.store = store;
    }

    /** All depots, and climates to start from. */
    record Page(List<DepotView> depots, List<Preset> presets) {}

    /**
     * A depot.
     *
     * @param name unique
     * @param altitude in the reader's system; empty when not known
     * @param timeZone its name; empty when not known
     * @param now the time on its clock now; absent when the zone is not known
     * @param runHoursPerYear by its climate; absent where nobody told one
     * @param units how many stand there
     * @param boxes of its form
     */
    record DepotView(String name, String altitude, String timeZone, Optional<String> now, Optional<Integer> runHoursPerYear, int units,
            Map<String, String> boxes) {}

    /** A climate to start from, as boxes. */
    record Preset(String name, Map<String, String> boxes) {}

    /** Run-hours from monthly temperatures, as boxes. */
    record Hours(Map<String, String> boxes) {}

    void list(Context request) {
        UnitSystem system = Reader.system(request);
        Map<String, Integer> counts = store.depots().unitCounts();
        request.json(new Page(store.depots().all(Asking.of(request).reach()).stream().map(depot -> view(depot, counts.getOrDefault(depot.name(), 0), system)).toList(),
                List.of(new Preset("usual for the northern half of the earth", ClimateForm.texts(Climate.NORTHERN)),
                        new Preset("usual for the southern half", ClimateForm.texts(Climate.SOUTHERN)))));
    }

    void save(Context request) {
        Boxes boxes = boxes(request);
        DepotForm form = new DepotForm(boxes);
        Depot depot = form.depot();
        Optional<Depot> before = store.depots().named(depot.name());
        LocalDate today = BecauseForm.today(store.clock(), depot.timeZone().orElse(ZoneOffset.UTC));
        Because because = before.isEmpty() ? new Because(Asking.of(request).name(), today, "") : BecauseForm.of(request, boxes, today, false);
        Refused.ifAny(boxes.problems());
        Asking.of(request).refuseBeyond("name", depot.name());
        store.depots().save(depot);
        boolean judgedOtherwise = before.isPresent() && !(before.get().altitude().equals(depot.altitude())
                && before.get().climate().equals(depot.climate()));
        if (judgedOtherwise) {
            store.fleet().settle(depot, new Because(because.by(), because.on(), because.reason().isEmpty() ? "the depot was changed" : because.reason()));
        }
        request.json(view(depot, store.depots().unitCounts().getOrDefault(depot.name(), 0), Reader.system(request)));
    }

    void hours(Context request) {
        Boxes boxes = boxes(request);
        Optional<Climate> climate = ClimateForm.fromTemperatures(boxes);
        Refused.ifAny(boxes.problems());
        request.json(new Hours(climate.map(ClimateForm::texts).orElse(Map.of())));
    }

    private DepotView view(Depot depot, int units, UnitSystem system) {
        return new DepotView(depot.name(), depot.altitude().map(altitude -> Shown.of(altitude, system).text()).orElse(""),
                depot.timeZone().map(ZoneId::getId).orElse(""),
                depot.timeZone().map(zone -> VisitRow.moment(store.clock().instant(), Optional.of(zone))),
                depot.climate().map(climate -> Integer.parseInt(Decimal.text(new SeasonClock(climate).runHoursPerYear(), 0))), units,
                DepotForm.texts(depot, system));
    }

    private static Boxes boxes(Context request) {
        Map<String, String> texts = Reader.body(request, UnitApi.Form.class).boxes();
        return new Boxes(texts == null ? Map.of() : texts);
    }
}
