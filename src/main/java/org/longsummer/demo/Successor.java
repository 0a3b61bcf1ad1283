package org.longsummer.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.Unit;
import org.longsummer.store.FleetUnit;

/**
 * A machine that took the place of one that was found dead; what was read after the exchange is its own.
 *
 * @param oldId the machine that went
 * @param unit the new machine, in its place
 * @param on the day of the exchange
 */
record Successor(String oldId, FleetUnit unit, LocalDate on) {
    private static final String EXCHANGED = "unit_replaced";
    private static final int WARRANTY_YEARS = 2;

    /** The new machine of a story in which one was exchanged. */
    static Optional<Successor> of(FleetUnit old, String newId, List<InventedVisit> visits) {
        return visits.stream().filter(visit -> visit.cells().get("work_done").contains(EXCHANGED)).findFirst()
                .map(visit -> visit.at().toLocalDate()).map(day -> new Successor(old.id(), successor(old, newId, day), day));
    }

    private static FleetUnit successor(FleetUnit old, String newId, LocalDate day) {
        Unit unit = new Unit(newId, old.unit().label(), old.unit().site(), old.unit().plate(), old.unit().delivery(), Optional.of(day),
                old.unit().altitude());
        return new FleetUnit(unit, old.make(), old.model(), "KV4410273", old.vehicle(), old.roofPosition(), old.owner(),
                Optional.of(day.plusYears(WARRANTY_YEARS)), FleetUnit.Duty.IN_SERVICE);
    }

    /** Visits in order of time, those after the exchange given to the new machine. */
    List<InventedVisit> shared(List<InventedVisit> visits) {
        List<InventedVisit> shared = new ArrayList<>();
        boolean exchanged = false;
        for (InventedVisit visit : visits) {
            if (exchanged) {
                visit.cells().put("unit_id", unit.id());
            }
            shared.add(visit);
            exchanged |= visit.cells().get("work_done").contains(EXCHANGED);
        }
        return shared;
    }

    /** The machine that went, as it is listed afterwards. */
    FleetUnit gone(FleetUnit old) {
        Unit unit = old.unit();
        return new FleetUnit(new Unit(unit.id(), oldLabel(old), unit.site(), unit.plate(), unit.delivery(), unit.installedOn(), unit.altitude()),
                old.make(), old.model(), old.serial(), "", "", old.owner(), old.warrantyUntil(), FleetUnit.Duty.OUT_OF_SERVICE);
    }

    /** What the machine that went is called afterwards. */
    static String oldLabel(FleetUnit old) {
        return old.unit().label() + ", the old one";
    }
}
