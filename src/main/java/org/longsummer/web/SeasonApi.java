package org.longsummer.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.longsummer.access.Reach;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.weighing.CallPrice;
import org.longsummer.quantity.Money;
import org.longsummer.science.statistics.Wilson1927;
import org.longsummer.store.ActHistory;
import org.longsummer.store.Depot;
import org.longsummer.store.Prices;
import org.longsummer.store.Readiness;
import org.longsummer.store.Store;
import org.longsummer.store.YardDays;

/** How ready each depot is for the season, and what became of the acts so far. */
final class SeasonApi {
    private static final int WARRANTY_DAYS = 120;
    /** Below so many acts whose outcome is known a rate says nothing. Ours. */
    private static final int ENOUGH = 10;
    private static final double COVERAGE = 2;

    private final Store store;

    SeasonApi(Store store) {
        this.store = store;
    }

    /** @param depots by name, units without a depot first */
    record SeasonView(String today, List<DepotView> depots) {}

    /**
     * A depot's readiness.
     *
     * @param opens the season's next opening, where the depot's climate is known and the season is closed
     * @param closes its end, where it is open
     * @param readyOn by when the rest is checked at the pace of the last four weeks; absent when nothing is left or nothing was checked
     * @param planned sums of planned work, as text
     */
    record DepotView(String depot, int units, int checked, int left, int lately, Optional<String> readyOn, Optional<String> opens,
            Optional<String> closes, int act, int overdue, int filters, int warranties, int outOfService, int works, int worksWithoutPrice,
            List<MoneyView> planned) {}

    /**
     * What became of the acts.
     *
     * @param known acts whose outcome is known: work cured it, or it went away without any
     * @param rate share of these that went away without work, in per cent with its interval; absent when they are too few
     * @param missesCost what the misses cost by the price lists
     */
    record HistoryView(int acts, int confirmed, int notCured, int wentAway, int awaiting, int open, int misses, int known, Optional<RateView> rate,
            Optional<MoneyView> missesCost) {}

    record RateView(int percent, int low, int high) {}

    void show(Context request) {
        Reach reach = Asking.of(request).reach();
        Map<String, Depot> depots = store.depots().all(reach).stream().collect(Collectors.toMap(Depot::name, Function.identity()));
        LocalDate today = LocalDate.ofInstant(store.clock().instant(), ZoneOffset.UTC);
        List<Readiness> ready = store.seasons().readiness(reach, new YardDays(today, Optional.empty(), today.plusDays(WARRANTY_DAYS)),
                store.clock().instant());
        request.json(new SeasonView(today.toString(), ready.stream().map(depot -> view(depot, Optional.ofNullable(depots.get(depot.depot())), today)).toList()));
    }

    private static DepotView view(Readiness ready, Optional<Depot> depot, LocalDate today) {
        Optional<SeasonClock> season = depot.flatMap(Depot::climate).map(SeasonClock::new);
        return new DepotView(ready.depot(), ready.units(), ready.checked(), ready.notChecked(), ready.checkedLately(),
                ready.daysLeft().map(days -> today.plusDays(days).toString()),
                season.filter(clock -> !clock.isOpen(today)).map(clock -> clock.nextOpening(today).toString()),
                season.filter(clock -> clock.isOpen(today)).map(clock -> clock.seasonEnd(today).toString()), ready.act(), ready.overdue(),
                ready.filterOverdue(), ready.warrantyEnding(), ready.outOfService(), ready.planned().works(), ready.planned().withoutPrice(),
                ready.planned().prices().stream().map(MoneyView::of).toList());
    }

    void history(Context request) {
        Map<String, ActHistory> byDepot = store.seasons().acts(Asking.of(request).reach());
        ActHistory all = byDepot.values().stream().reduce(ActHistory.NONE, ActHistory::plus);
        int known = all.confirmed() + all.wentAway();
        request.json(new HistoryView(all.acts(), all.confirmed(), all.notCured(), all.wentAway(), all.awaiting(), all.open(), all.misses(), known,
                known < ENOUGH ? Optional.empty() : Optional.of(rate(all.wentAway(), known)), missesCost(byDepot)));
    }

    private static RateView rate(int happened, int known) {
        Wilson1927.Interval interval = Wilson1927.interval(happened, known, COVERAGE);
        return new RateView((int) Math.round(100.0 * happened / known), (int) Math.floor(100 * interval.low()), (int) Math.ceil(100 * interval.high()));
    }

    private Optional<MoneyView> missesCost(Map<String, ActHistory> byDepot) {
        return byDepot.entrySet().stream().filter(depot -> depot.getValue().misses() > 0)
                .map(depot -> CallPrice.quitting(Prices.merged(store.prices().layers(depot.getKey()))).times(depot.getValue().misses()))
                .reduce(Money::plus).map(MoneyView::of);
    }
}
