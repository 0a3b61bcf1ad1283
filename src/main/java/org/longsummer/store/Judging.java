package org.longsummer.store;

import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ObjIntConsumer;
import java.util.function.Predicate;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/**
 * Saves visits and judges their units again by replaying all that counts. A visit, the verdicts it changes and its unit's standing are
 * on disk together or not at all.
 */
public final class Judging {
    /** So few that whoever saves a visit meanwhile hardly waits. */
    private static final int ADVISED_AT_ONCE = 25;
    /** Dirt and wear move in weeks, so that a list need not be worked out anew every day. */
    private static final int DAYS_ADVICE_HOLDS = 7;

    private final Jdbi reader;
    private final Jdbi writer;
    private final GroupCommit commits;
    private final VisitSaving saving;
    private final LearnedLevels learned;
    private final Clock clock;
    private final LookingAhead ahead;

    Judging(Jdbi reader, Jdbi writer, GroupCommit commits, LearnedLevels learned, LookingAhead ahead, Clock clock) {
        this.reader = reader;
        this.writer = writer;
        this.commits = commits;
        this.saving = new VisitSaving(reader, commits, learned, this);
        this.learned = learned;
        this.ahead = ahead;
        this.clock = clock;
    }

    /** Saves a visit or a correction. Once this returns {@link Saving.Stored}, it is on disk. */
    public Saving save(Entry entry) {
        return saving.save(entry);
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
            judgeAgain(handle, stored.get().visit().unitId());
            return Withdrawing.WITHDRAWN;
        });
    }

    /** What became of a wish to withdraw a visit. */
    public enum Withdrawing { WITHDRAWN, NO_LONGER_COUNTED, UNKNOWN_VISIT }

    /** Judges one unit again, for example after its plate was changed. */
    public void judgeAgain(String unitId) {
        writer.useTransaction(handle -> judgeAgain(handle, unitId));
    }

    void judgeAgain(Handle handle, String unitId) {
        Units.find(handle, unitId).ifPresent(unit -> judged(handle, unit, Visits.current(handle, unitId), closed(handle).closings(), visit -> false)
                .write(handle));
    }

    /** Withdraws a visit and stores it, as typed, on the unit whose it was. */
    void give(Handle handle, RecordedVisit given, String otherId, String newId, UnitChange.Because because) {
        Visits.withdraw(handle, given.visit().id(), new Withdrawal(because.by(), clock.instant().truncatedTo(ChronoUnit.MILLIS),
                because.reason()));
        Entry moved = new Entry(given.visit().on(otherId, newId), given.entry().typed(), because.by(), Optional.empty());
        LearnedLevels.Closed closed = closed(handle);
        Visits.append(handle, List.of(moved), receipt(closed));
        Photos.follow(handle, given.visit().id(), newId);
        judgeAgain(handle, given.visit().unitId());
        judgeAgain(handle, otherId);
    }

    /** Judges every unit again from the closings as they are; no day is closed for it. */
    void judgeAllAgain(Consumer<String> unitJudged) {
        writer.useTransaction(handle -> new FleetJudging(handle, learned.known(handle).closings(), unitJudged)
                .judge(Units.idsOfVisited(handle)));
    }

    /**
     * Works out again some advice that days or prices have overtaken.
     *
     * @return how many units it was worked out for; 0 when none was left
     */
    public int adviseAgain() {
        LocalDate before = today().minusDays(DAYS_ADVICE_HOLDS);
        List<String> unitIds = reader.withHandle(handle -> LookingAhead.overtaken(handle, before, ADVISED_AT_ONCE));
        if (unitIds.isEmpty()) {
            // nobody who writes is kept waiting for a look at nothing
            return 0;
        }
        UnitsBasis basis = reader.withHandle(handle -> UnitsBasis.of(handle, unitIds));
        Map<String, Advised> advised = reader.inTransaction(handle -> {
            List<FleetUnit> units = Units.among(handle, unitIds);
            return ahead.advised(handle, units, FleetJudging.judged(units, Visits.currentByUnit(handle, unitIds), learned.known(handle).closings()));
        });
        return commits.write(handle -> {
            if (basis.equals(UnitsBasis.of(handle, unitIds))) {
                AdviceColumns.write(handle, advised);
            }
            return unitIds.size();
        });
    }

    /**
     * The verdicts of a unit, in order of time; nothing is written. Those that a page shows whole, the last and the last that was no
     * retake, give their reasons.
     */
    public List<Verdict> verdicts(String unitId) {
        return replayed(unitId, (unit, visits, closings) -> {
            List<Verdict> verdicts = Assessment.explaining(unit, visits, closings, lastOf(visits)::contains);
            boolean showsTwo = !verdicts.isEmpty() && verdicts.get(verdicts.size() - 1).state() == State.RETAKE;
            return showsTwo ? Assessment.ofUnit(unit, visits, closings) : verdicts;
        });
    }

    private static List<Visit> lastOf(List<Visit> visits) {
        return visits.subList(Math.max(0, visits.size() - 1), visits.size());
    }

    /** What one visit of a unit says, with its reasons; empty when it does not count. */
    public Optional<Verdict> verdict(String unitId, String visitId) {
        return verdictOf(replayed(unitId, (unit, visits, closings) -> Assessment.explaining(unit, visits, closings,
                visit -> visit.id().equals(visitId))), visitId);
    }

    /** The same without reasons, several times quicker. */
    public List<Verdict> briefVerdicts(String unitId) {
        return replayed(unitId, Assessment::briefly);
    }

    private List<Verdict> replayed(String unitId, Replaying replaying) {
        return reader.inTransaction(handle -> {
            Closings closings = learned.known(handle).closings();
            return Units.find(handle, unitId).map(unit -> replaying.verdicts(unit.unit(), Visits.current(handle, unitId), closings))
                    .orElse(List.of());
        });
    }

    private interface Replaying {
        List<Verdict> verdicts(Unit unit, List<Visit> visits, Closings closings);
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
            return verdictOf(Assessment.explaining(unit.unit(), visits, learned.known(handle).closings(), visit::equals), visit.id());
        }));
    }

    /**
     * Takes in many units and visits in one transaction, with everything judged.
     *
     * @param unitJudged told the id of each unit that was judged
     * @throws X when the source does; nothing is taken in
     */
    public <X extends Exception> Intake.Report takeIn(Intake.Source<X> source, Consumer<String> unitJudged) throws X {
        return new TakingIn(reader, writer, learned, this, clock).run(source, unitJudged);
    }

    /**
     * The same of what was read from files: many visits are judged before the record is held.
     *
     * @param rest hands over what else there is; whatever fails there keeps all from being taken in
     * @param done told what was done, and to how many; may end it all by failing
     * @throws IOException when a temporary file cannot be written or read; nothing is taken in
     */
    public Intake.Report takeIn(Brought brought, Consumer<Intake> rest, ObjIntConsumer<String> done) throws IOException {
        return new TakingIn(reader, writer, learned, this, clock).run(brought, rest, done);
    }

    /** What was learned until yesterday, after closing what was still open: what a visit saved now is judged by. */
    public Closings learnedUntilYesterday() {
        return writer.inTransaction(handle -> closed(handle).closings());
    }

    Receipt receipt(LearnedLevels.Closed closed) {
        return new Receipt(clock.instant(), closed.generation(), closed.through());
    }

    /** What was learned until yesterday; closes what is still open. */
    LearnedLevels.Closed closed(Handle handle) {
        LearnedLevels.Closed known = known(handle);
        if (known.isThrough(today().minusDays(1))) {
            return known;
        }
        LearnedLevels.Closed closed = OpenDays.closeBefore(handle, today(), LearnedLevels.read(handle));
        learned.publishAfterCommit(handle, closed);
        return closed;
    }

    /** Every day that is over was closed and, as far as can be told, no other one. */
    boolean isInStep(LearnedLevels.Closed known) {
        LocalDate today = today();
        return known.isThrough(today.minusDays(1)) && !known.isAheadOf(today);
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    /** What was closed, without days that are yet to come: they were closed while the clock was ahead. */
    LearnedLevels.Closed known(Handle handle) {
        LocalDate today = today();
        LearnedLevels.Closed known = learned.known(handle);
        if (!known.isAheadOf(today)) {
            return known;
        }
        LearnedLevels.Closed reopened = LearnedLevels.reopenAfter(handle, today, known);
        learned.publishAfterCommit(handle, reopened);
        return reopened;
    }

    JudgedUnit judged(Handle handle, FleetUnit unit, List<Visit> visits, Closings closings, Predicate<Visit> explained) {
        List<Verdict> verdicts = Assessment.explaining(unit.unit(), visits, closings, explained);
        return new JudgedUnit(unit, verdicts, ahead.advised(handle, List.of(unit), Map.of(unit.id(), verdicts)).get(unit.id()));
    }

    private static Optional<Verdict> verdictOf(List<Verdict> verdicts, String visitId) {
        return verdicts.stream().filter(verdict -> verdict.visit().id().equals(visitId)).findFirst();
    }
}
