package org.longsummer.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.longsummer.access.Reach;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;

/**
 * All that judging what is brought needs of the record, put beside it: the stored visits of its units, or of all units where the whole
 * history is to be learned from anew, are added to the visits that are brought.
 *
 * @param basis what the record held then
 * @param fresh the rows that are not stored yet, in order of units
 * @param alreadyStored how many rows are
 * @param isHistory more is brought of days that are closed than there was before
 * @param known what was closed
 * @param units those of the visits as they will be, by their numbers
 */
record Gathered(Basis basis, PackedVisits visits, int[] fresh, int alreadyStored, boolean isHistory, Closings known, List<Unit> units) {
    private static final int AT_ONCE = 500;

    /** @return empty when only the record itself, while it is held, can tell what becomes of what is brought */
    static Optional<Gathered> of(Handle handle, LearnedLevels.Closed known, LocalDate today, Brought brought) {
        PackedVisits visits = brought.visits();
        Basis basis = Basis.of(handle, known, today);
        if (visits.corrects() || basis.visits() > 0 && !leaveOutStored(handle, visits)) {
            return Optional.empty();
        }
        int given = visits.count();
        int[] fresh = visits.byUnit();
        boolean isHistory = Arrays.stream(fresh).filter(row -> known.isThrough(visits.day(row))).count() > basis.visits();
        boolean learnsAnew = isHistory || known.through().isEmpty();
        if (!learnsAnew && !known.isThrough(today.minusDays(1)) || known.isAheadOf(today)) {
            return Optional.empty();
        }
        if (basis.visits() > 0) {
            addStored(handle, visits, learnsAnew ? Units.idsOfVisited(handle) : unitsOf(visits, fresh));
        }
        return Optional.of(new Gathered(basis, visits, fresh, given - fresh.length, isHistory, known.closings(), units(handle, brought)));
    }

    boolean learnsAnew() {
        return isHistory || basis.closedThrough().isEmpty();
    }

    /** @return false when a row has the id of another visit */
    private static boolean leaveOutStored(Handle handle, PackedVisits visits) {
        int given = visits.count();
        for (int from = 0; from < given; from += AT_ONCE) {
            Map<String, Integer> rows = new HashMap<>();
            for (int row = from; row < Math.min(given, from + AT_ONCE); row++) {
                rows.put(visits.id(row), row);
            }
            for (RecordedVisit stored : Visits.among(handle, rows.keySet())) {
                int row = rows.get(stored.visit().id());
                if (!stored.entry().hasSameContentAs(visits.entry(row).toMilliseconds())) {
                    return false;
                }
                visits.leaveOut(row);
            }
        }
        return true;
    }

    private static List<String> unitsOf(PackedVisits visits, int[] rows) {
        return Arrays.stream(rows).map(visits::unit).distinct().mapToObj(visits.unitIds()::get).toList();
    }

    private static void addStored(Handle handle, PackedVisits visits, List<String> unitIds) {
        for (List<String> some : Parts.of(unitIds, AT_ONCE)) {
            Visits.currentByUnit(handle, some).values().forEach(ofUnit -> ofUnit.forEach(visits::add));
        }
    }

    /** The units as they will be: as brought, or as stored, each by its depot's clock. */
    private static List<Unit> units(Handle handle, Brought brought) {
        Map<String, Depot> depots = Depots.all(handle, Reach.EVERYWHERE).stream()
                .collect(Collectors.toMap(Depot::name, depot -> depot, (one, other) -> one, HashMap::new));
        brought.depots().forEach(depot -> depots.put(depot.name(), depot));
        List<String> ids = brought.visits().unitIds();
        Map<String, Unit> stored = new HashMap<>();
        for (List<String> some : Parts.of(ids.stream().filter(id -> !brought.units().containsKey(id)).toList(), AT_ONCE)) {
            Units.among(handle, some).forEach(unit -> stored.put(unit.id(), unit.unit()));
        }
        List<Unit> units = new ArrayList<>(ids.size());
        for (String id : ids) {
            FleetUnit given = brought.units().get(id);
            units.add(by(depots, given == null ? stored.get(id) : given.unit()));
        }
        return units;
    }

    private static Unit by(Map<String, Depot> depots, Unit unit) {
        Optional<SeasonClock> clock = Optional.ofNullable(depots.get(unit.site())).flatMap(depot -> ClimateColumn.clock(depot.climate().map(ClimateColumn::text)));
        return unit.clock().equals(clock) ? unit : unit.by(clock);
    }
}
