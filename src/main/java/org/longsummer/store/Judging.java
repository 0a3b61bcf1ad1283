package org.longsummer.store;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/**
 * Saves visits and judges their units again by replaying all that counts. A visit, the verdicts it changes and its unit's standing are
 * on disk together or not at all.
 */
public final class Judging {
    private final Jdbi reader;
    private final Jdbi writer;
    private final LearnedLevels learned;
    private final Clock clock;

    Judging(Jdbi reader, Jdbi writer, LearnedLevels learned, Clock clock) {
        this.reader = reader;
        this.writer = writer;
        this.learned = learned;
        this.clock = clock;
    }

    /** Saves a visit or a correction. Once this returns {@link Saving.Stored}, it is on disk. */
    public Saving save(Entry entry) {
        Entry exact = entry.toMilliseconds();
        return writer.inTransaction(handle -> obstacle(handle, exact).orElseGet(() -> {
            Visits.append(handle, List.of(exact), clock.instant());
            List<Verdict> verdicts = judge(handle, Units.find(handle, exact.visit().unitId()).orElseThrow().unit());
            return new Saving.Stored(verdictOf(verdicts, exact.visit().id()).orElseThrow());
        }));
    }

    /** Marks a visit as no longer counting. */
    public Withdrawing withdraw(String visitId, String by, String reason) {
        return writer.inTransaction(handle -> {
            Optional<RecordedVisit> stored = Visits.find(handle, visitId);
            if (stored.isEmpty()) {
                return Withdrawing.UNKNOWN_VISIT;
            }
            if (!stored.get().counts()) {
                return Withdrawing.NO_LONGER_COUNTED;
            }
            Visits.withdraw(handle, visitId, new Withdrawal(by, clock.instant().truncatedTo(ChronoUnit.MILLIS), reason));
            judge(handle, Units.find(handle, stored.get().visit().unitId()).orElseThrow().unit());
            return Withdrawing.WITHDRAWN;
        });
    }

    /** What became of a wish to withdraw a visit. */
    public enum Withdrawing { WITHDRAWN, NO_LONGER_COUNTED, UNKNOWN_VISIT }

    /** Judges one unit again, for example after its plate was changed. */
    public void judgeAgain(String unitId) {
        writer.useTransaction(handle -> Units.find(handle, unitId).ifPresent(unit -> judge(handle, unit.unit())));
    }

    /** The verdicts of a unit with all their reasons, in order of time; nothing is written. */
    public List<Verdict> verdicts(String unitId) {
        return reader.inTransaction(handle -> Units.find(handle, unitId)
                .map(unit -> Assessment.ofUnit(unit.unit(), Visits.current(handle, unitId), learned.all())).orElse(List.of()));
    }

    /**
     * What a visit would say if it were saved now; nothing is written. A visit of the same id takes the stored one's place.
     *
     * @return empty when its unit is not known
     */
    public Optional<Verdict> preview(Visit visit) {
        return reader.inTransaction(handle -> Units.find(handle, visit.unitId()).flatMap(unit -> {
            List<Visit> visits = new ArrayList<>(Visits.current(handle, visit.unitId()));
            visits.removeIf(stored -> stored.id().equals(visit.id()));
            visits.add(visit);
            return verdictOf(Assessment.ofUnit(unit.unit(), visits, learned.all()), visit.id());
        }));
    }

    /**
     * Takes in many units and visits in one transaction, with everything judged.
     *
     * @param unitJudged told the id of each unit that was judged
     * @throws X when the source does; nothing is taken in
     */
    public <X extends Exception> Intake.Report takeIn(Intake.Source<X> source, Consumer<String> unitJudged) throws X {
        return writer.inTransaction(handle -> {
            Intake intake = new Intake(handle, clock);
            source.into(intake);
            return intake.finish(learned.all(), unitJudged);
        });
    }

    private List<Verdict> judge(Handle handle, Unit unit) {
        return judge(handle, List.of(unit), learned.all()).get(unit.id());
    }

    /** Judges units by what counts now and writes their verdicts and their standings; returns the verdicts by unit. */
    static Map<String, List<Verdict>> judge(Handle handle, List<Unit> units, Closings closings) {
        Map<String, List<Visit>> visits = Visits.currentByUnit(handle, units.stream().map(Unit::id).toList());
        Map<String, List<Verdict>> verdicts = new LinkedHashMap<>();
        units.forEach(unit -> verdicts.put(unit.id(),
                Assessment.ofUnit(unit, visits.getOrDefault(unit.id(), List.of()), closings)));
        Verdicts.replace(handle, verdicts);
        Standings.judge(handle, verdicts);
        return verdicts;
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

    private static Optional<Verdict> verdictOf(List<Verdict> verdicts, String visitId) {
        return verdicts.stream().filter(verdict -> verdict.visit().id().equals(visitId)).findFirst();
    }
}
