package org.longsummer.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Visit;

/**
 * Saves visits. Each is judged before the one writer is taken, so that people wait for one another's writing only; where something changed
 * meanwhile on which the verdict rests, it is judged again.
 */
final class VisitSaving {
    private final Jdbi reader;
    private final GroupCommit commits;
    private final LearnedLevels learned;
    private final Judging judging;
    /** One processor is left to whoever does something else, such as to look or to bring a file. */
    private final Semaphore judges = new Semaphore(Math.max(1, Runtime.getRuntime().availableProcessors() - 1), true);

    VisitSaving(Jdbi reader, GroupCommit commits, LearnedLevels learned, Judging judging) {
        this.reader = reader;
        this.commits = commits;
        this.learned = learned;
        this.judging = judging;
    }

    /** Saves a visit or a correction. Once this returns {@link Saving.Stored}, it is on disk. */
    Saving save(Entry entry) {
        Entry exact = entry.toMilliseconds();
        if (!judging.isInStep(learned.known())) {
            judging.learnedUntilYesterday();
        }
        Ready ready = judgedAhead(exact);
        return ready.obstacle().orElseGet(() -> commits.write(handle -> {
            if (holds(handle, exact, ready)) {
                return write(handle, exact, ready);
            }
            judging.closed(handle);
            Ready again = ready(handle, exact);
            return again.obstacle().orElseGet(() -> write(handle, exact, again));
        }));
    }

    private Ready judgedAhead(Entry entry) {
        judges.acquireUninterruptibly();
        try {
            return reader.inTransaction(handle -> ready(handle, entry));
        } finally {
            judges.release();
        }
    }

    private boolean holds(Handle handle, Entry entry, Ready ready) {
        return ready.basis().equals(basis(handle, entry)) && judging.isInStep(ready.closed()) && !Visits.isThere(handle, entry.visit().id());
    }

    private static UnitsBasis basis(Handle handle, Entry entry) {
        return UnitsBasis.of(handle, List.of(entry.visit().unitId()));
    }

    /**
     * A visit that was judged and can be stored, or what stands in its way.
     *
     * @param judged its unit with it; null where something stands in the way
     */
    private record Ready(UnitsBasis basis, LearnedLevels.Closed closed, Optional<Saving> obstacle, JudgedUnit judged) {}

    private Ready ready(Handle handle, Entry entry) {
        UnitsBasis basis = basis(handle, entry);
        LearnedLevels.Closed closed = learned.known(handle, basis.generation(), basis.closedThrough());
        Optional<FleetUnit> unit = Units.find(handle, entry.visit().unitId());
        Optional<Saving> obstacle = obstacle(handle, entry, unit);
        return new Ready(basis, closed, obstacle, obstacle.isPresent() ? null : judged(handle, entry, unit.orElseThrow(), closed.closings()));
    }

    private JudgedUnit judged(Handle handle, Entry entry, FleetUnit unit, Closings closings) {
        List<Visit> visits = new ArrayList<>(Visits.current(handle, unit.id()));
        entry.correction().ifPresent(correction -> visits.removeIf(visit -> visit.id().equals(correction.correctsId())));
        visits.add(entry.visit());
        return judging.judged(handle, unit, visits, closings, entry.visit()::equals);
    }

    private Saving write(Handle handle, Entry entry, Ready ready) {
        Visits.append(handle, List.of(entry), judging.receipt(ready.closed()));
        entry.correction().ifPresent(correction -> Photos.follow(handle, correction.correctsId(), entry.visit().id()));
        ready.judged().write(handle);
        return new Saving.Stored(ready.judged().verdictOf(entry.visit().id()).orElseThrow());
    }

    private static Optional<Saving> obstacle(Handle handle, Entry entry, Optional<FleetUnit> unit) {
        if (Visits.isThere(handle, entry.visit().id())) {
            RecordedVisit stored = Visits.find(handle, entry.visit().id()).orElseThrow();
            return Optional.of(stored.entry().hasSameContentAs(entry) ? new Saving.AlreadyStored(stored) : new Saving.IdTaken(stored));
        }
        if (unit.isEmpty()) {
            return Optional.of(new Saving.UnknownUnit(entry.visit().unitId()));
        }
        return entry.correction().flatMap(correction -> obstacle(handle, entry, correction.correctsId()));
    }

    private static Optional<Saving> obstacle(Handle handle, Entry entry, String correctsId) {
        Optional<RecordedVisit> corrected = Visits.find(handle, correctsId)
                .filter(stored -> stored.visit().unitId().equals(entry.visit().unitId()));
        if (corrected.isEmpty()) {
            return Optional.of(new Saving.UnknownVisit(correctsId));
        }
        return corrected.get().counts() ? Optional.empty() : Optional.of(new Saving.NoLongerCounts(corrected.get()));
    }
}
