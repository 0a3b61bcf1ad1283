package org.longsummer.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    VisitSaving(Jdbi reader, GroupCommit commits, LearnedLevels learned, Judging judging) {
        this.reader = reader;
        this.commits = commits;
        this.learned = learned;
        this.judging = judging;
    }

    /** Saves a visit or a correction. Once this returns {@link Saving.Stored}, it is on disk. */
    Saving save(Entry entry) {
        Entry exact = entry.toMilliseconds();
        if (!judging.isClosedUntilYesterday(reader.withHandle(learned::known))) {
            judging.learnedUntilYesterday();
        }
        Ready ready = reader.inTransaction(handle -> ready(handle, exact, learned.known(handle)));
        return ready.obstacle().orElseGet(() -> commits.write(handle -> {
            LearnedLevels.Closed closed = judging.closed(handle);
            boolean holds = ready.basis().equals(VisitBasis.of(handle, exact.visit()));
            return write(handle, exact, holds ? ready : ready(handle, exact, closed), closed);
        }));
    }

    /** A visit that was judged and can be stored, or what stands in its way. */
    private record Ready(VisitBasis basis, Optional<Saving> obstacle, Optional<JudgedUnit> judged) {}

    private Ready ready(Handle handle, Entry entry, LearnedLevels.Closed closed) {
        VisitBasis basis = VisitBasis.of(handle, entry.visit());
        Optional<Saving> obstacle = obstacle(handle, entry);
        return new Ready(basis, obstacle, obstacle.isPresent() ? Optional.empty() : Optional.of(judged(handle, entry, closed.closings())));
    }

    private JudgedUnit judged(Handle handle, Entry entry, Closings closings) {
        List<Visit> visits = new ArrayList<>(Visits.current(handle, entry.visit().unitId()));
        entry.correction().ifPresent(correction -> visits.removeIf(visit -> visit.id().equals(correction.correctsId())));
        visits.add(entry.visit());
        return judging.judged(handle, Units.find(handle, entry.visit().unitId()).orElseThrow(), visits, closings, entry.visit()::equals);
    }

    private Saving write(Handle handle, Entry entry, Ready ready, LearnedLevels.Closed closed) {
        return ready.obstacle().orElseGet(() -> {
            Visits.append(handle, List.of(entry), judging.receipt(closed));
            entry.correction().ifPresent(correction -> Photos.follow(handle, correction.correctsId(), entry.visit().id()));
            JudgedUnit judged = ready.judged().orElseThrow();
            judged.write(handle);
            return new Saving.Stored(judged.verdictOf(entry.visit().id()).orElseThrow());
        });
    }

    private static Optional<Saving> obstacle(Handle handle, Entry entry) {
        Optional<RecordedVisit> sameId = Visits.find(handle, entry.visit().id());
        if (sameId.isPresent()) {
            return Optional.of(sameId.get().entry().hasSameContentAs(entry) ? new Saving.AlreadyStored(sameId.get())
                    : new Saving.IdTaken(sameId.get()));
        }
        if (Units.find(handle, entry.visit().unitId()).isEmpty()) {
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
