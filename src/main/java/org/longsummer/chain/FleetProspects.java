package org.longsummer.chain;

import java.util.Optional;
import java.util.TreeMap;
import org.longsummer.chain.outlook.FaultModel;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.Outlooker;
import org.longsummer.chain.outlook.TypicalWeather;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.chain.weighing.Weigher;

/** What lies ahead of the units of a fleet. What units at one altitude have in common is worked out once. For one thread. */
public final class FleetProspects {
    /** More altitudes than depots have; beyond them it begins anew rather than growing without end. */
    private static final int MOST_ALTITUDES = 1000;

    private final LifeCurve life;
    private final SeasonClock clock;
    private final Optional<PriceList> prices;
    private final TreeMap<Double, AtAltitude> byAltitude = new TreeMap<>();

    /**
     * @param life how long such units live
     * @param prices what work costs; empty when no advice is asked for
     */
    public FleetProspects(LifeCurve life, SeasonClock clock, Optional<PriceList> prices) {
        this.life = life;
        this.clock = clock;
        this.prices = prices;
    }

    private record AtAltitude(Outlooker outlooker, Optional<Weigher> weigher) {}

    /** Of one unit, from its first verdict on. */
    public UnitProspects of(Unit unit) {
        if (byAltitude.size() > MOST_ALTITUDES) {
            byAltitude.clear();
        }
        AtAltitude common = byAltitude.computeIfAbsent(unit.altitude().metres(), metres -> at(unit));
        return new UnitProspects(unit, common.outlooker, common.weigher);
    }

    private AtAltitude at(Unit unit) {
        FaultModel faults = TypicalWeather.faultModel(unit.altitude());
        return new AtAltitude(new Outlooker(faults, life, clock), prices.map(list -> new Weigher(faults, life, clock, list)));
    }
}
