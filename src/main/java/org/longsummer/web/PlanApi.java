package org.longsummer.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.longsummer.access.Secret;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.PlannedSaving;
import org.longsummer.chain.weighing.WeighingWording;
import org.longsummer.quantity.Money;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.PlannedSavings.Expected;
import org.longsummer.store.PlannedWork;
import org.longsummer.store.PlannedWork.As;
import org.longsummer.store.Store;
import org.longsummer.wire.Boxes;

/** Work that is planned: put down, listed with what it costs and saves, and ended as done or dropped. */
final class PlanApi {
    private final Store store;

    PlanApi(Store store) {
        this.store = store;
    }

    /**
     * What is still to be done, soonest first, and the sums a depot.
     *
     * @param currency of the price list; plans priced in another one are listed and not summed
     */
    record PlansView(String currency, List<PlanView> plans, List<DepotSum> depots) {}

    /**
     * A plan.
     *
     * @param works as at visits; {@code workText} in words
     * @param price as agreed; absent when none was
     * @param costs what it will cost, by its price or by the list
     * @param saves expected, against leaving the unit alone, its price taken off
     * @param spread one standard deviation of it
     */
    record PlanView(String id, String unitId, String label, String depot, List<String> works, String workText, String plannedFor,
            Optional<MoneyView> price, MoneyView costs, MoneyView saves, MoneyView spread, String note, String plannedBy) {}

    /** Sums of a depot; spreads of different units are taken to have nothing to do with each other. */
    record DepotSum(String depot, int plans, MoneyView costs, MoneyView saves, MoneyView spread) {}

    void list(Context request) {
        Asking asking = Asking.of(request);
        Optional<String> depot = Reader.text(request, "depot");
        if (depot.filter(name -> !asking.sees(name)).isPresent()) {
            throw Refused.unknown("depot", "", "There is no depot of this name.");
        }
        request.json(view(store.plans().toDo(depot), asking, Reader.text(request, "unit")));
    }

    /** Boxes {@code unit}, {@code works}, {@code planned_for}, {@code price}, {@code note}; {@code id} so that sending twice plans once. */
    void add(Context request) {
        Map<String, String> texts = Reader.body(request, UnitApi.Form.class).boxes();
        Boxes boxes = new Boxes(texts == null ? Map.of() : texts);
        Asking asking = Asking.of(request);
        Optional<FleetUnit> unit = boxes.text("unit").flatMap(store.units()::find).filter(found -> asking.sees(found.unit().site()));
        if (unit.isEmpty()) {
            boxes.refuse("unit", "There is no unit of this name.", "Plan from the unit's page.");
        }
        PlanForm form = PlanForm.of(boxes, store.prices().currency());
        Refused.ifAny(boxes.problems());
        store.plans().add(new PlannedWork(boxes.text("id").orElseGet(() -> Secret.id("w")), unit.orElseThrow().id(), form.works(), form.plannedFor(), form.price(), form.note(),
                asking.actor().name(), store.clock().instant(), Optional.empty()));
        request.status(201);
        request.json(view(store.plans().toDo(Optional.empty()), asking, Optional.of(unit.orElseThrow().id())));
    }

    void done(Context request) {
        end(request, As.DONE);
    }

    void drop(Context request) {
        end(request, As.DROPPED);
    }

    private void end(Context request, As as) {
        String plan = request.pathParam("plan");
        if (!store.plans().end(plan, as, Asking.of(request).actor().name())) {
            throw unknown(plan);
        }
        list(request);
    }

    static Refused unknown(String plan) {
        return Refused.unknown("plan", plan, "There is no planned work of this id that is still to be done.");
    }

    private PlansView view(List<PlannedWork> plans, Asking asking, Optional<String> onlyUnit) {
        List<PlanView> views = new ArrayList<>();
        Map<String, Sum> sums = new TreeMap<>();
        String currency = store.prices().currency();
        for (Expected expected : store.plannedSavings().of(plans, unit -> asking.sees(unit.unit().site())
                && onlyUnit.filter(wanted -> !wanted.equals(unit.id())).isEmpty())) {
            views.add(view(expected.plan(), expected.unit(), expected.saving()));
            if (expected.sameCurrency()) {
                sums.computeIfAbsent(expected.unit().unit().site(), depot -> new Sum(currency)).add(expected.saving());
            }
        }
        return new PlansView(currency, views, sums.entrySet().stream().map(sum -> sum.getValue().of(sum.getKey())).toList());
    }

    private static PlanView view(PlannedWork plan, FleetUnit unit, PlannedSaving saving) {
        return new PlanView(plan.id(), unit.id(), unit.unit().label(), unit.unit().site(), WeighingView.words(plan.works()),
                WeighingWording.works(plan.works()), plan.plannedFor().toString(), plan.price().map(MoneyView::of), MoneyView.of(saving.price()),
                MoneyView.of(saving.saving()), MoneyView.of(saving.spread()), plan.note(), plan.plannedBy());
    }

    /** Sums of one depot. */
    private static final class Sum {
        private Money costs;
        private Money saves;
        private double variance;
        private int count;

        Sum(String currency) {
            costs = Money.zero(currency);
            saves = Money.zero(currency);
        }

        void add(PlannedSaving saving) {
            costs = costs.plus(saving.price());
            saves = saves.plus(saving.saving());
            variance += saving.spread().amount() * saving.spread().amount();
            count++;
        }

        DepotSum of(String depot) {
            return new DepotSum(depot, count, MoneyView.of(costs), MoneyView.of(saves), MoneyView.of(Money.of(Math.sqrt(variance), costs.currency())));
        }
    }
}
