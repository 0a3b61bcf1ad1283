package org.longsummer.store;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Altitude;
import org.longsummer.store.FleetUnit.Duty;
import org.longsummer.store.UnitChange.Because;
import org.longsummer.store.UnitChange.Kind;

/**
 * Where units are changed: each change is recorded with who, when and why, and the unit is judged anew where it matters, in one
 * transaction. A visit stays with the unit it was recorded on, which is the machine.
 */
public final class Fleet {
    private static final int UNITS_AT_ONCE = 100;

    private final Jdbi writer;
    private final Judging judging;
    private final Clock clock;

    Fleet(Jdbi writer, Judging judging, Clock clock) {
        this.writer = writer;
        this.judging = judging;
        this.clock = clock;
    }

    /**
     * Where a machine stands.
     *
     * @param label what people call it there
     * @param depot empty when unknown
     * @param vehicle empty when unknown
     * @param roofPosition empty when unknown
     */
    public record Place(String label, String depot, String vehicle, String roofPosition) {
        static Place of(FleetUnit unit) {
            return new Place(unit.unit().label(), unit.unit().site(), unit.vehicle(), unit.roofPosition());
        }
    }

    /** Adds a unit. */
    public void add(FleetUnit unit, Because because) {
        writer.useTransaction(handle -> {
            Units.save(handle, List.of(unit));
            record(handle, unit.id(), Kind.ADDED, because, Optional.empty(), Map.of(), Map.of());
        });
    }

    /** Changes what is known of a unit; nothing happens when nothing differs. */
    public void edit(FleetUnit unit, Because because) {
        writer.useTransaction(handle -> {
            FleetUnit before = Units.find(handle, unit.id()).orElseThrow();
            change(handle, before, unit, before.duty() != unit.duty() ? Kind.DUTY : Kind.EDITED, because, Optional.empty());
        });
    }

    /** Moves a machine to another place; the altitude is that of the depot, where it is known. */
    public void move(String unitId, Place place, Because because) {
        writer.useTransaction(handle -> {
            FleetUnit before = Units.find(handle, unitId).orElseThrow();
            change(handle, before, at(handle, before, place), Kind.MOVED, because, Optional.empty());
        });
    }

    /** Each of two machines stands, or always stood, where the other one is recorded. */
    public void swapPlaces(String unitId, String otherId, Because because) {
        writer.useTransaction(handle -> {
            FleetUnit one = Units.find(handle, unitId).orElseThrow();
            FleetUnit other = Units.find(handle, otherId).orElseThrow();
            change(handle, one, at(handle, one, Place.of(other)), Kind.PLACES_SWAPPED, because, Optional.of(otherId));
            change(handle, other, at(handle, other, Place.of(one)), Kind.PLACES_SWAPPED, because, Optional.of(unitId));
        });
    }

    /** Each of two units carries the plate that is recorded on the other. */
    public void swapPlates(String unitId, String otherId, Because because) {
        writer.useTransaction(handle -> {
            FleetUnit one = Units.find(handle, unitId).orElseThrow();
            FleetUnit other = Units.find(handle, otherId).orElseThrow();
            change(handle, one, withPlate(one, other), Kind.PLATES_SWAPPED, because, Optional.of(otherId));
            change(handle, other, withPlate(other, one), Kind.PLATES_SWAPPED, because, Optional.of(unitId));
        });
    }

    /**
     * A new machine takes the place of another, whose visits stay with it.
     *
     * @param newUnit in the place of the old one
     * @param oldLabel what the old one is called from now on
     * @param oldDuty what becomes of the old one
     */
    public void replace(String oldId, FleetUnit newUnit, String oldLabel, Duty oldDuty, Because because) {
        writer.useTransaction(handle -> {
            FleetUnit old = Units.find(handle, oldId).orElseThrow();
            Units.save(handle, List.of(newUnit));
            record(handle, newUnit.id(), Kind.TOOK_PLACE, because, Optional.of(oldId), Map.of(), Map.of());
            FleetUnit gone = at(handle, old, new Place(oldLabel, old.unit().site(), "", ""));
            FleetUnit laidUp = new FleetUnit(gone.unit(), gone.make(), gone.model(), gone.serial(), "", "", gone.owner(),
                    gone.warrantyUntil(), oldDuty);
            change(handle, old, laidUp, Kind.REPLACED, because, Optional.of(newUnit.id()));
        });
    }

    /**
     * Gives a visit to the unit whose it really was: it is withdrawn here and stored there, as typed.
     *
     * @param newId of the visit on the other unit
     * @return false, and nothing is changed, when the visit does not count, or one of the three is not there
     */
    public boolean giveVisit(String visitId, String otherId, String newId, Because because) {
        return writer.inTransaction(handle -> {
            Optional<RecordedVisit> visit = Visits.find(handle, visitId).filter(RecordedVisit::counts);
            if (visit.isEmpty() || Units.find(handle, otherId).isEmpty() || Visits.find(handle, newId).isPresent()) {
                return false;
            }
            String here = visit.get().visit().unitId();
            judging.give(handle, visit.get(), otherId, newId, because);
            record(handle, here, Kind.VISIT_GIVEN, because, Optional.of(otherId), Map.of("visit_id", visitId), Map.of());
            record(handle, otherId, Kind.VISIT_TAKEN, because, Optional.of(here), Map.of(), Map.of("visit_id", newId));
            return true;
        });
    }

    /**
     * Gives a depot's units its altitude; they are judged again by that and by its climate, a few at once, those of a large depot by
     * {@link Rejudging}.
     */
    public void settle(Depot depot, Because because) {
        writer.useTransaction(handle -> {
            List<String> ids = Units.idsAt(handle, depot.name());
            for (List<String> some : Parts.of(ids, UNITS_AT_ONCE)) {
                for (FleetUnit unit : Units.among(handle, some)) {
                    describe(handle, unit, unit.with(withAltitude(unit.unit(), depot.altitude())), Kind.EDITED, because, Optional.empty());
                }
            }
            if (ids.size() <= UNITS_AT_ONCE) {
                ids.forEach(id -> judging.judgeAgain(handle, id));
            } else {
                Rejudging.begin(handle, depot.name());
            }
        });
    }

    private void change(Handle handle, FleetUnit before, FleetUnit after, Kind kind, Because because, Optional<String> other) {
        if (describe(handle, before, after, kind, because, other)) {
            judging.judgeAgain(handle, after.id());
        }
    }

    /** Writes what is known of a unit now, with who, when and why; false when nothing differs. */
    private boolean describe(Handle handle, FleetUnit before, FleetUnit after, Kind kind, Because because, Optional<String> other) {
        UnitFields.Difference difference = UnitFields.Difference.between(before, after);
        if (difference.isNone() && other.isEmpty()) {
            return false;
        }
        Units.save(handle, List.of(after));
        record(handle, after.id(), kind, because, other, difference.before(), difference.after());
        return true;
    }

    private void record(Handle handle, String unitId, Kind kind, Because because, Optional<String> other, Map<String, String> before,
            Map<String, String> after) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        UnitChanges.append(handle, List.of(new UnitChange(unitId, kind, because, now, other, before, after)));
    }

    private static FleetUnit at(Handle handle, FleetUnit unit, Place place) {
        boolean sameDepot = unit.unit().site().equals(place.depot());
        Optional<Altitude> altitude = sameDepot ? Optional.empty() : Depots.named(handle, place.depot()).flatMap(Depot::altitude);
        Unit old = unit.unit();
        Unit moved = new Unit(old.id(), place.label(), place.depot(), old.plate(), old.delivery(), old.installedOn(), old.altitude());
        return new FleetUnit(withAltitude(moved, altitude), unit.make(), unit.model(), unit.serial(), place.vehicle(), place.roofPosition(),
                unit.owner(), unit.warrantyUntil(), unit.duty());
    }

    private static Unit withAltitude(Unit unit, Optional<Altitude> altitude) {
        return new Unit(unit.id(), unit.label(), unit.site(), unit.plate(), unit.delivery(), unit.installedOn(),
                altitude.orElse(unit.altitude()), unit.clock());
    }

    private static FleetUnit withPlate(FleetUnit unit, FleetUnit from) {
        Unit old = unit.unit();
        Unit plated = new Unit(old.id(), old.label(), old.site(), from.unit().plate(), old.delivery(), from.unit().installedOn(), old.altitude());
        return new FleetUnit(plated, from.make(), from.model(), from.serial(), unit.vehicle(), unit.roofPosition(), unit.owner(),
                from.warrantyUntil(), unit.duty());
    }
}
