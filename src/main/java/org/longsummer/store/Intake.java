package org.longsummer.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Takes in many units and visits at once: all of them or, when something stands in the way, none. Units come before their visits. */
public final class Intake {
    private static final int ROWS_AT_ONCE = 500;
    private static final int CONFLICTS_LISTED = 200;

    private final Handle handle;
    private final Receipt receipt;
    private final int visitsBefore;
    private final List<FleetUnit> units = new ArrayList<>();
    private final Map<String, Entry> visits = new LinkedHashMap<>();
    private final TreeSet<String> toJudge = new TreeSet<>();
    private final List<String> idsTaken = new ArrayList<>();
    private int unitsAdded;
    private int unitsChanged;
    private int visitsStored;
    private int lateVisits;
    private int visitsAlreadyStored;

    Intake(Handle handle, Receipt receipt) {
        this.handle = handle;
        this.receipt = receipt;
        this.visitsBefore = handle.createQuery("select count(*) from visit").mapTo(Integer.class).one();
    }

    /**
     * Hands over what is to be taken in.
     *
     * @param <X> what reading the source may throw; then nothing is taken in
     */
    @FunctionalInterface
    public interface Source<X extends Exception> {
        void into(Intake intake) throws X;
    }

    /**
     * What became of it.
     *
     * @param unitsAdded units that were new
     * @param unitsChanged units that were known and are different now
     * @param visitsStored visits that were new
     * @param visitsAlreadyStored visits that were there with the same content
     * @param idsTaken visits whose id is taken by another content, the first 200; when there are any, nothing was taken in
     */
    public record Report(int unitsAdded, int unitsChanged, int visitsStored, int visitsAlreadyStored, List<String> idsTaken) {}

    /** A unit as it is in the store, those handed over before included. */
    public Optional<FleetUnit> known(String id) {
        flushUnits();
        return Units.find(handle, id);
    }

    public void unit(FleetUnit unit) {
        units.add(unit);
        if (units.size() >= ROWS_AT_ONCE) {
            flushUnits();
        }
    }

    /** A visit that corrects nothing; ids must differ within one intake. */
    public void visit(Entry entry) {
        Entry exact = entry.toMilliseconds();
        visits.put(exact.visit().id(), exact);
        if (visits.size() >= ROWS_AT_ONCE) {
            flushVisits();
        }
    }

    private void flushUnits() {
        Map<String, FleetUnit> before = Units.among(handle, units.stream().map(FleetUnit::id).toList()).stream()
                .collect(Collectors.toMap(FleetUnit::id, Function.identity()));
        List<FleetUnit> different = units.stream().filter(unit -> !unit.equals(before.get(unit.id()))).toList();
        Units.save(handle, different);
        for (FleetUnit unit : different) {
            FleetUnit old = before.get(unit.id());
            unitsAdded += old == null ? 1 : 0;
            unitsChanged += old == null ? 0 : 1;
            if (old != null && !old.unit().equals(unit.unit())) {
                toJudge.add(unit.id());
            }
        }
        units.clear();
    }

    private void flushVisits() {
        flushUnits();
        for (RecordedVisit stored : Visits.among(handle, visits.keySet())) {
            Entry given = visits.remove(stored.visit().id());
            if (stored.entry().hasSameContentAs(given)) {
                visitsAlreadyStored++;
            } else if (idsTaken.size() < CONFLICTS_LISTED) {
                idsTaken.add(stored.visit().id());
            }
        }
        Visits.append(handle, visits.values(), receipt);
        visitsStored += visits.size();
        for (Entry entry : visits.values()) {
            toJudge.add(entry.visit().unitId());
            lateVisits += receipt.isLate(entry.visit().utcDay()) ? 1 : 0;
        }
        visits.clear();
    }

    /** Something stands in the way of all of it. */
    boolean isRefused() {
        flushVisits();
        return !idsTaken.isEmpty();
    }

    /**
     * More was brought in of days that are closed than was there before: a history, which is to be learned from in its own order and
     * not in one lump at the next closing.
     */
    boolean isHistory() {
        return lateVisits > visitsBefore;
    }

    List<String> unitsToJudge() {
        return List.copyOf(toJudge);
    }

    Report report() {
        return idsTaken.isEmpty() ? new Report(unitsAdded, unitsChanged, visitsStored, visitsAlreadyStored, List.of())
                : new Report(0, 0, 0, visitsAlreadyStored, List.copyOf(idsTaken));
    }
}
