package org.longsummer.store;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.UnitAhead.Assumed;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.departure.Hemisphere;
import org.longsummer.chain.outlook.FaultModel;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.TypicalWeather;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.quantity.Altitude;

/** What lies ahead of the units that are stored, by their verdicts, prices, quotes, warranty and depot's clock. */
public final class LookingAhead {
    private static final int MOST_ALTITUDES = 1000;

    private final Jdbi reader;
    private final Clock clock;
    private final OwnLives lives;
    /** One model an altitude: as few as there are depots. */
    private final Map<Altitude, FaultModel> faults = new ConcurrentHashMap<>();

    LookingAhead(Jdbi reader, Clock clock) {
        this.reader = reader;
        this.clock = clock;
        this.lives = new OwnLives();
    }

    /**
     * What lies ahead of one unit.
     *
     * @param verdicts of the unit, in order of time
     * @param today on the depot's clock
     * @param somebodyOnSite no call-out is paid
     */
    public UnitAhead of(FleetUnit unit, List<Verdict> verdicts, LocalDate today, boolean somebodyOnSite) {
        return reader.inTransaction(handle -> of(unit, verdicts, today, PriceTable.read(handle).of(unit), Quotes.of(handle, unit.id()), handle,
                somebodyOnSite));
    }

    /** The same by other prices. */
    public UnitAhead of(FleetUnit unit, List<Verdict> verdicts, LocalDate today, boolean somebodyOnSite, PriceList prices) {
        return reader.inTransaction(handle -> of(unit, verdicts, today, prices, Quotes.of(handle, unit.id()), handle, somebodyOnSite));
    }

    UnitAhead of(FleetUnit unit, List<Verdict> verdicts, LocalDate today, PriceList prices, Optional<Quotes.InHand> quote, Handle handle,
            boolean somebodyOnSite) {
        Assumed assumed = new Assumed(prices, clockOf(unit, verdicts), unit.warrantyUntil(),
                quote.map(Quotes.InHand::quote).filter(given -> given.price().currency().equals(prices.currency())), somebodyOnSite,
                life(prices, lives.curve(handle, today)), faultsAt(unit.unit().altitude()));
        return UnitAhead.of(unit.unit(), verdicts, today, assumed);
    }

    /** Ages given for the fleet and for a depot that contradict each other are left aside, so that they keep no visit from being stored. */
    private static LifeCurve life(PriceList prices, Optional<LifeCurve> own) {
        return prices.number(PriceKey.LIFE_EARLY) < prices.number(PriceKey.LIFE_LATE) ? prices.lifeOr(own)
                : PriceList.defaults(prices.currency()).with(PriceKey.OCCUPANCY, prices.number(PriceKey.OCCUPANCY)).lifeOr(own);
    }

    private FaultModel faultsAt(Altitude altitude) {
        if (faults.size() > MOST_ALTITUDES) {
            faults.clear();
        }
        return faults.computeIfAbsent(altitude, TypicalWeather::faultModel);
    }

    /** Works out the advice for units whose visits were just judged, by unit. */
    Map<String, Advised> advised(Handle handle, Collection<FleetUnit> units, Map<String, List<Verdict>> verdicts) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        PriceTable prices = PriceTable.read(handle);
        Map<String, Quotes.InHand> quotes = Quotes.of(handle, units.stream().map(FleetUnit::id).toList());
        Map<String, Advised> advised = new LinkedHashMap<>();
        for (FleetUnit unit : units) {
            List<Verdict> ofUnit = verdicts.getOrDefault(unit.id(), List.of());
            UnitAhead ahead = of(unit, ofUnit, today, prices.of(unit), Optional.ofNullable(quotes.get(unit.id())), handle, false);
            advised.put(unit.id(), Advised.of(ahead.advice(), limitOn(ahead, ofUnit), today));
        }
        return advised;
    }

    /** Of units that drift or worse; what lies ahead of a steady one rests on what may yet begin. */
    private static Optional<LocalDate> limitOn(UnitAhead ahead, List<Verdict> verdicts) {
        Optional<State> state = verdicts.stream().map(Verdict::state).filter(each -> each != State.RETAKE).reduce((earlier, later) -> later);
        return state.filter(last -> last != State.STEADY).flatMap(last -> ahead.outlook().likelyLimit());
    }

    /** The depot's clock; where nobody said how much units run there, that of the half of the earth which the visits tell. */
    private static SeasonClock clockOf(FleetUnit unit, List<Verdict> verdicts) {
        return Hemisphere.of(verdicts.stream().map(Verdict::visit).toList()).clock(unit.unit());
    }

    /** Notes that the advice for the units of a scope was made by other prices. */
    static void overtake(Handle handle, PriceScope scope) {
        String whose = switch (scope.kind()) {
            case FLEET -> ":name = ''";
            case DEPOT -> "depot = :name";
            case UNIT -> "unit_id = :name";
        };
        handle.createUpdate("update standing set advice_on = null where " + whose).bind("name", scope.name()).execute();
    }

    /** Notes that the advice for some units was made before their visits were judged anew. */
    static void overtake(Handle handle, Collection<String> unitIds) {
        if (!unitIds.isEmpty()) {
            handle.createUpdate("update standing set advice_on = null where advice_on is not null and unit_id in (<units>)")
                    .bindList("units", List.copyOf(unitIds)).execute();
        }
    }

    /** Units whose advice is older than some days, or was made by other prices. */
    static List<String> overtaken(Handle handle, LocalDate before, int most) {
        List<String> ids = new ArrayList<>(handle.createQuery("select unit_id from standing where advice_on is null order by unit_id limit :most")
                .bind("most", most).mapTo(String.class).list());
        ids.addAll(handle.createQuery("select unit_id from standing where advice_on < :before order by advice_on, unit_id limit :most")
                .bind("before", before.toString()).bind("most", most - ids.size()).mapTo(String.class).list());
        return ids;
    }
}
