package org.longsummer.demo;

import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Quote;
import org.longsummer.quantity.Money;
import org.longsummer.store.Business;
import org.longsummer.store.Fleet;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.PlannedWork;
import org.longsummer.store.Quotes;
import org.longsummer.store.Store;
import org.longsummer.store.UnitChange.Because;

/** What the office of the invented fleet did beside the visits: a machine exchanged, one moved, work planned, a quote asked for. */
final class DemoOffice {
    private static final String MOVED = "SP-10";
    private static final String NEW_VAN = "Van SP11";
    private static final String TO_MEND = "SP-03";
    private static final String QUOTED = "LO-04";
    private static final String MANAGER = "Rhona";
    private static final int PLANNED_IN_DAYS = 21;
    private static final int QUOTED_DAYS_AGO = 6;

    private DemoOffice() {}

    /** A unit as it is listed when all that happened to it has happened. */
    static FleetUnit atTheEnd(FleetUnit unit, Optional<Successor> successor) {
        if (unit.id().equals(MOVED)) {
            Unit old = unit.unit();
            return new FleetUnit(new Unit(old.id(), NEW_VAN, old.site(), old.plate(), old.delivery(), old.installedOn(), old.altitude()),
                    unit.make(), unit.model(), unit.serial(), NEW_VAN, unit.roofPosition(), unit.owner(), unit.warrantyUntil(), unit.duty());
        }
        return successor.filter(taken -> taken.oldId().equals(unit.id())).map(taken -> taken.gone(unit)).orElse(unit);
    }

    /** Does in a store that holds the visits what was done. */
    static void workIn(Store store, Optional<Successor> successor, int lastYear) {
        successor.ifPresent(taken -> store.fleet().replace(taken.oldId(), taken.unit(),
                Successor.oldLabel(store.units().find(taken.oldId()).orElseThrow()), FleetUnit.Duty.OUT_OF_SERVICE,
                new Because("Otto", taken.on(), "compressor found dead, unit exchanged")));
        FleetUnit moved = store.units().find(MOVED).orElseThrow();
        store.fleet().move(MOVED, new Fleet.Place(NEW_VAN, moved.unit().site(), NEW_VAN, moved.roofPosition()),
                new Because("Teodor", LocalDate.of(lastYear, Month.SEPTEMBER, 22), moved.vehicle() + " was sold, its unit was kept"));
        store.business().write(new Business("Ferrow Rentals", "14 Kiln Lane\nFerrow Flats", "555 0142", "", Optional.empty()));
        LocalDate today = LocalDate.ofInstant(store.clock().instant(), ZoneOffset.UTC);
        String currency = "USD";
        store.plans().add(new PlannedWork("demo-plan", TO_MEND, List.of(Work.CAPACITOR), today.plusDays(PLANNED_IN_DAYS),
                Optional.of(Money.of(165, currency)), "with the next service of the coach", MANAGER, store.clock().instant(), Optional.empty()));
        store.quotes().take(QUOTED, new Quotes.InHand(new Quote(Work.UNIT_REPLACED, Money.of(1_750, currency)), "Orrin Coach Works",
                Optional.of(today.minusDays(QUOTED_DAYS_AGO))));
    }
}
