package org.longsummer.chain;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.outlook.FaultModel;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.Outlooker;
import org.longsummer.chain.outlook.TypicalWeather;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.chain.weighing.Weigher;
import org.longsummer.quantity.Altitude;

/** What lies ahead of the units of a fleet. What those at one altitude and in one climate share is worked out once. For one thread. */
public final class FleetProspects {
    /** More places than depots are; beyond them it begins anew rather than growing without end. */
    private static final int MOST_PLACES = 1000;

    private final LifeCurve life;
    private final Optional<PriceList> prices;
    private final Map<Place, Ahead> byPlace = new LinkedHashMap<>();

    /**
     * @param life how long such units live
     * @param prices what work costs; empty when no advice is asked for
     */
    public FleetProspects(LifeCurve life, Optional<PriceList> prices) {
        this.life = life;
        this.prices = prices;
    }

    private record Place(Altitude altitude, SeasonClock clock) {}

    /** What units at one place have in common. */
    record Ahead(Outlooker outlooker, Optional<Weigher> weigher) {}

    /** Of one unit, from its first verdict on. */
    public UnitProspects of(Unit unit) {
        return new UnitProspects(this, unit);
    }

    Ahead at(Altitude altitude, SeasonClock clock) {
        if (byPlace.size() > MOST_PLACES) {
            byPlace.clear();
        }
        return byPlace.computeIfAbsent(new Place(altitude, clock), this::ahead);
    }

    private Ahead ahead(Place place) {
        FaultModel faults = TypicalWeather.faultModel(place.altitude);
        return new Ahead(new Outlooker(faults, life, place.clock), prices.map(list -> new Weigher(faults, life, place.clock, list)));
    }
}
