package org.longsummer.chain.weighing;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.outlook.FaultModel;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;

/**
 * Weighs keep, clean, repair and replace for one unit: the expected cost of each over every state that the history leaves possible, by
 * exact sums, so that two options differ only by what they change.
 */
public final class Weigher {
    private final FaultModel model;
    private final LifeCurve life;
    private final SeasonClock clock;
    private final PriceList prices;

    public Weigher(FaultModel model, LifeCurve life, SeasonClock clock, PriceList prices) {
        this.model = model;
        this.life = life;
        this.clock = clock;
        this.prices = prices;
    }

    public PriceList prices() {
        return prices;
    }

    public LifeCurve life() {
        return life;
    }

    /** The same with other prices. */
    public Weigher with(PriceList other) {
        return new Weigher(model, life, clock, other);
    }

    public Weighing weigh(Circumstances unit) {
        Table table = table(unit);
        List<OptionCost> options = new ArrayList<>();
        int season = stepOfSeasonEnd(unit.standing());
        for (Bundle bundle : table.bundles) {
            options.add(table.cost(bundle, season, prices.currency()));
        }
        List<Settling> settling = unit.standing().notCooling() ? List.of() : Settler.settling(table, unit, prices);
        return new Weighing(unit, prices, options, advise(unit, table), settling, money(table.worthOfKnowing()));
    }

    /**
     * What planned works save against leaving the unit alone.
     *
     * @param works one or more
     * @param agreed price all-in; the list's where none was agreed
     */
    public PlannedSaving planned(Circumstances unit, List<Work> works, Optional<Money> agreed) {
        return table(unit).planned(works, agreed, prices.currency());
    }

    /** The advice alone, for many units. */
    public Advice advise(Circumstances unit) {
        return advise(unit, table(unit));
    }

    private Table table(Circumstances unit) {
        Ledger ledger = new Ledger(unit, new Calendar(unit.standing().on(), clock, prices), model, life, prices);
        return unit.standing().notCooling() ? Table.ofDead(ledger, unit.standing(), stepOfSeasonEnd(unit.standing())) : Table.of(ledger, unit.standing());
    }

    private int stepOfSeasonEnd(Standing standing) {
        long days = ChronoUnit.DAYS.between(standing.on(), clock.seasonEnd(standing.on())) + 1;
        return (int) ((days + Calendar.STEP_DAYS - 1) / Calendar.STEP_DAYS);
    }

    private Advice advise(Circumstances unit, Table table) {
        List<Bundle> byCost = table.byCost();
        Bundle keep = table.bundles.get(Option.KEEP.ordinal());
        Bundle cheapest = byCost.get(0);
        Bundle chosen = cheapest;
        for (int i = byCost.size() - 1; i >= 0; i--) {
            boolean pays = keep.expected() - byCost.get(i).expected() >= table.ledger.material(byCost.get(i));
            if (byCost.get(i) == keep || pays && isCarried(byCost.get(i), unit.standing(), table)) {
                chosen = byCost.get(i);
            }
        }
        Optional<Option> notCarried = isCarried(cheapest, unit.standing(), table) ? Optional.empty() : Optional.of(cheapest.option());
        return advice(unit, table, chosen, notCarried);
    }

    private Advice advice(Circumstances unit, Table table, Bundle chosen, Optional<Option> notCarried) {
        Bundle keep = table.bundles.get(Option.KEEP.ordinal());
        Bundle runnerUp = table.runnerUp(chosen);
        double waiting = chosen == keep ? 0 : table.costOfWaiting(chosen);
        double distance = runnerUp.expected() - chosen.expected();
        return new Advice(chosen.option(), chosen.works(), money(keep.expected() - chosen.expected()), table.bestProbability(chosen),
                Math.abs(distance) >= prices.number(PriceKey.MATERIAL_SAVING), runnerUp.option(), money(distance),
                timing(unit.standing(), chosen, waiting), money(waiting), notCarried, chosen == keep ? whenOnSite(unit, table) : List.of());
    }

    /**
     * A new unit or an opened circuit is not bought on a first visit's word, nor for a state that is less likely than not, nor on age by
     * a default life curve: the history has to show a fault, or the curve has to be the fleet's own.
     */
    private boolean isCarried(Bundle bundle, Standing standing, Table table) {
        boolean dear = bundle.option() == Option.REPLACE || bundle.remedies().contains(Remedy.SEALED_SYSTEM);
        if (!dear || standing.notCooling()) {
            return true;
        }
        boolean ownCurve = life.origin() == LifeCurve.Origin.OWN_FLEET || life.origin() == LifeCurve.Origin.USER;
        boolean shown = standing.judgedVisits() >= 2 && standing.sound() < 0.5;
        return (shown || ownCurve) && table.bestProbability(bundle) >= 0.5;
    }

    private Advice.Timing timing(Standing standing, Bundle chosen, double waiting) {
        if (chosen.option() == Option.KEEP) {
            boolean suspect = clock.isOpen(standing.on()) && standing.hasHistory() && standing.sound() < 0.5;
            return suspect ? Advice.Timing.LOOK_AGAIN_IN_30_DAYS : Advice.Timing.NEXT_CHECK;
        }
        if (!clock.isOpen(standing.on())) {
            return Advice.Timing.BEFORE_SEASON_OPENS;
        }
        return waiting < prices.number(PriceKey.MATERIAL_SAVING) ? Advice.Timing.WITHIN_30_DAYS : Advice.Timing.NOW;
    }

    private List<Work> whenOnSite(Circumstances unit, Table table) {
        if (unit.somebodyOnSite() || unit.standing().notCooling()) {
            return List.of();
        }
        Table there = table.withSomebodyOnSite();
        Bundle best = there.byCost().get(0);
        double saving = there.bundles.get(Option.KEEP.ordinal()).expected() - best.expected();
        boolean worth = best.option() != Option.REPLACE && !best.remedies().contains(Remedy.SEALED_SYSTEM)
                && saving >= there.ledger.material(best);
        return worth ? best.works() : List.of();
    }

    private Money money(double amount) {
        return Money.of(amount, prices.currency());
    }
}
