package org.longsummer.web;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.CallPrice;
import org.longsummer.quantity.Money;
import org.longsummer.store.PlannedWork;
import org.longsummer.store.Prices;
import org.longsummer.store.Standing;
import org.longsummer.store.Store;
import org.longsummer.wire.Boxes;

/** Work that is planned for units that were chosen in the yard. */
final class ChosenWorkApi {
    private static final int AT_ONCE = 500;

    private final Store store;

    ChosenWorkApi(Store store) {
        this.store = store;
    }

    /** What is planned, and for which units; sent twice under one id it is planned once. */
    record Form(String id, YardChoice.Form choice, Map<String, String> boxes) {}

    record Planned(int planned) {}

    /** What is the same for all units. */
    private record Plan(String id, PlanForm form, String by, Instant at) {}

    void plan(Context request) {
        Form form = Reader.body(request, Form.class);
        Plan plan = plan(request, form);
        LocalDate today = LocalDate.ofInstant(store.clock().instant(), ZoneOffset.UTC);
        YardChoice choice = YardChoice.of(form.choice() == null ? new YardChoice.Form(List.of(), null, null) : form.choice(),
                Asking.of(request), store, today);
        request.status(201).json(new Planned(add(plan, choice)));
    }

    private Plan plan(Context request, Form form) {
        Boxes boxes = new Boxes(form.boxes() == null ? Map.of() : form.boxes());
        String id = RoundApi.id(form.id(), boxes);
        Plan plan = new Plan(id, PlanForm.of(boxes, store.prices().currency()), RoundApi.by(request, boxes), store.clock().instant());
        Refused.ifAny(boxes.problems());
        return plan;
    }

    /** Some at a time; interrupted, the same request goes on where it was. */
    private int add(Plan plan, YardChoice choice) {
        Map<String, Money> byDepot = new HashMap<>();
        List<PlannedWork> some = new ArrayList<>();
        int[] added = {0};
        choice.forEach(unit -> {
            Money price = plan.form().price().orElseGet(() -> byDepot.computeIfAbsent(unit.depot(),
                    depot -> CallPrice.of(Prices.merged(store.prices().layers(depot)), plan.form().works())));
            some.add(planned(plan, unit, price));
            added[0]++;
            if (some.size() == AT_ONCE) {
                store.plans().add(some);
                some.clear();
            }
        });
        store.plans().add(some);
        return added[0];
    }

    private static PlannedWork planned(Plan plan, Standing unit, Money price) {
        return new PlannedWork(plan.id() + "-" + unit.unitId(), unit.unitId(), plan.form().works(), plan.form().plannedFor(), Optional.of(price),
                plan.form().note(), plan.by(), plan.at(), Optional.empty());
    }
}
