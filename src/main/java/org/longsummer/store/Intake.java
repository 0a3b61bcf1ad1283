package org.longsummer.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ObjIntConsumer;
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
    private final Map<String, Instant> received = new HashMap<>();
    private final Map<String, Entry> corrections = new LinkedHashMap<>();
    private final Map<String, Withdrawal> withdrawals = new LinkedHashMap<>();
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
     * @param idsTaken visits whose id is taken by another content, or that correct what cannot be corrected, the first 200; when there are any, nothing was taken in
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

    /** A visit; ids must differ within one intake. One that corrects another is taken in after all the others. */
    public void visit(Entry entry) {
        visit(entry, receipt.at());
    }

    /** Visits that were looked over and are not stored yet, in their order. */
    void visits(Gathered gathered, ObjIntConsumer<String> done) {
        flushUnits();
        PackedVisits visits = gathered.visits();
        Visits.append(handle, visits, gathered.fresh(), receipt, done);
        visitsStored += gathered.fresh().length;
        visitsAlreadyStored += gathered.alreadyStored();
        for (int row : gathered.fresh()) {
            toJudge.add(visits.unitIds().get(visits.unit(row)));
        }
    }

    /** A visit that was received before, by another record. */
    public void visit(Entry entry, Instant receivedAt) {
        Entry exact = entry.toMilliseconds();
        received.put(exact.visit().id(), receivedAt);
        if (exact.correction().isPresent()) {
            corrections.put(exact.visit().id(), exact);
            return;
        }
        visits.put(exact.visit().id(), exact);
        if (visits.size() >= ROWS_AT_ONCE) {
            flushVisits();
        }
    }

    /** A visit, handed over too, was withdrawn. */
    public void withdrawn(String visitId, Withdrawal withdrawal) {
        withdrawals.put(visitId, withdrawal);
    }

    /** A depot; units that stand there already are judged anew when it differs. */
    public void depot(Depot depot) {
        Optional<Depot> before = Depots.named(handle, depot.name());
        if (!before.equals(Optional.of(depot))) {
            Depots.save(handle, depot);
            toJudge.addAll(Units.idsAt(handle, depot.name()));
        }
    }

    /** What became of a unit; its units are handed over before it. */
    public void change(UnitChange change) {
        flushUnits();
        if (!UnitChanges.isThere(handle, change)) {
            UnitChanges.append(handle, List.of(change));
        }
    }

    /** A figure of a price list. */
    public void price(PriceFigure figure) {
        Prices.put(handle, figure);
    }

    /** Planned work; its unit is handed over before it. */
    public void plan(PlannedWork plan) {
        flushUnits();
        if (!Plans.find(handle, plan.id()).equals(Optional.of(plan))) {
            Plans.put(handle, plan);
        }
    }

    /** A price in hand; its unit is handed over before it. */
    public void quote(String unitId, Quotes.InHand quote) {
        flushUnits();
        if (!Quotes.of(handle, unitId).equals(Optional.of(quote))) {
            Quotes.put(handle, unitId, quote);
        }
    }

    /** Where a unit stands; the unit is handed over before it. */
    public void place(String unitId, Rounds.Place place) {
        flushUnits();
        if (!Rounds.place(handle, unitId).equals(Optional.of(place))) {
            Rounds.stand(handle, Map.of(unitId, place));
        }
    }

    /** A round with its stops in walking order; their units are handed over before it. Stops that are stored and not given stay. */
    public void round(VisitRound round, List<Rounds.Leg> legs) {
        flushUnits();
        Rounds.put(handle, round, legs);
    }

    public void toolkit(Toolkit toolkit) {
        if (!Technicians.named(handle, toolkit.technician()).equals(Optional.of(toolkit))) {
            Technicians.save(handle, toolkit);
        }
    }

    public void business(Business business) {
        if (!TheBusiness.read(handle).isSameAs(business)) {
            TheBusiness.write(handle, business);
        }
    }

    /** A photo; its visit is handed over before it. */
    public void photo(Photo photo, Optional<byte[]> bytes) {
        flushAll();
        if (Photos.find(handle, photo.id()).isEmpty()) {
            Photos.append(handle, photo, bytes.orElse(null));
        }
    }

    private void flushUnits() {
        Map<String, FleetUnit> before = Units.among(handle, units.stream().map(FleetUnit::id).toList()).stream()
                .collect(Collectors.toMap(FleetUnit::id, Function.identity()));
        List<FleetUnit> different = units.stream().filter(unit -> !isSame(unit, before.get(unit.id()))).toList();
        Units.save(handle, different);
        for (FleetUnit unit : different) {
            FleetUnit old = before.get(unit.id());
            unitsAdded += old == null ? 1 : 0;
            unitsChanged += old == null ? 0 : 1;
            if (old != null) {
                UnitChanges.note(handle, old, unit, receipt.at());
            }
            if (old != null && !old.unit().equals(unit.unit().by(old.unit().clock()))) {
                toJudge.add(unit.id());
            }
        }
        units.clear();
    }

    /** The clock is the depot's: a unit is handed over without it. */
    private static boolean isSame(FleetUnit unit, FleetUnit known) {
        return known != null && known.equals(unit.with(unit.unit().by(known.unit().clock())));
    }

    /** Corrections come after what they correct, and withdrawals at the end. */
    private void flushAll() {
        flushVisits();
        while (!corrections.isEmpty()) {
            List<Entry> ready = corrections.values().stream().filter(entry -> !corrections.containsKey(entry.correction().orElseThrow().correctsId())).toList();
            if (ready.isEmpty()) {
                corrections.keySet().forEach(this::clash);
                corrections.clear();
            }
            for (Entry entry : ready) {
                corrections.remove(entry.visit().id());
                flushCorrection(entry);
            }
        }
        withdrawals.forEach(this::withdraw);
        withdrawals.clear();
    }

    private void flushCorrection(Entry entry) {
        String corrects = entry.correction().orElseThrow().correctsId();
        Optional<RecordedVisit> corrected = Visits.find(handle, corrects).filter(stored -> stored.visit().unitId().equals(entry.visit().unitId()));
        boolean isFree = corrected.flatMap(RecordedVisit::correctedBy).filter(by -> !by.equals(entry.visit().id())).isEmpty();
        if (corrected.isEmpty() || !isFree) {
            clash(entry.visit().id());
            return;
        }
        visits.put(entry.visit().id(), entry);
        flushVisits();
    }

    private void withdraw(String visitId, Withdrawal withdrawal) {
        Optional<RecordedVisit> visit = Visits.find(handle, visitId);
        if (visit.isPresent() && visit.get().withdrawal().isEmpty()) {
            Visits.withdraw(handle, visitId, withdrawal);
            toJudge.add(visit.get().visit().unitId());
        }
    }

    private void clash(String visitId) {
        if (idsTaken.size() < CONFLICTS_LISTED) {
            idsTaken.add(visitId);
        }
    }

    private void flushVisits() {
        flushUnits();
        for (RecordedVisit stored : Visits.among(handle, visits.keySet())) {
            Entry given = visits.remove(stored.visit().id());
            if (stored.entry().hasSameContentAs(given)) {
                visitsAlreadyStored++;
            } else {
                clash(stored.visit().id());
            }
        }
        Map<Instant, List<Entry>> byReceipt = new LinkedHashMap<>();
        visits.values().forEach(entry -> byReceipt.computeIfAbsent(received.getOrDefault(entry.visit().id(), receipt.at()), at -> new ArrayList<>())
                .add(entry));
        byReceipt.forEach((at, entries) -> Visits.append(handle, entries, receipt.at(at)));
        visits.keySet().forEach(received::remove);
        visitsStored += visits.size();
        for (Entry entry : visits.values()) {
            toJudge.add(entry.visit().unitId());
            lateVisits += receipt.isLate(entry.visit().utcDay()) ? 1 : 0;
        }
        visits.clear();
    }

    /** Something stands in the way of all of it. */
    boolean isRefused() {
        flushAll();
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
