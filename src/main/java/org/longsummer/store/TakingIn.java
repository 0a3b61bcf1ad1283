package org.longsummer.store;

import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ObjIntConsumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.learning.Closings;

/**
 * Takes a fleet's files into the record in one transaction, with everything judged. Many visits are judged before the transaction, so that
 * whoever saves meanwhile waits for the writing alone.
 */
final class TakingIn {
    /** Fewer visits are judged while they are written: nobody notices. */
    private static final int WORTH_JUDGING_AHEAD = 1_000;
    /** How often it is judged ahead again because what others saved meanwhile changed everything. */
    private static final int ATTEMPTS = 3;

    private final Jdbi reader;
    private final Jdbi writer;
    private final LearnedLevels learned;
    private final Judging judging;
    private final Clock clock;

    TakingIn(Jdbi reader, Jdbi writer, LearnedLevels learned, Judging judging, Clock clock) {
        this.reader = reader;
        this.writer = writer;
        this.learned = learned;
        this.judging = judging;
        this.clock = clock;
    }

    /** Takes in what a source hands over row by row, judging it while the record is held. */
    <X extends Exception> Intake.Report run(Intake.Source<X> source, Consumer<String> unitJudged) throws X {
        return writer.inTransaction(handle -> {
            Intake intake = new Intake(handle, judging.receipt(judging.known(handle)));
            source.into(intake);
            if (intake.isRefused()) {
                handle.rollback();
                return intake.report();
            }
            Closings closings = intake.isHistory() ? learnedAnew(handle) : judging.closed(handle).closings();
            new FleetJudging(handle, closings, unitJudged).judge(intake.isHistory() ? Units.idsOfVisited(handle) : intake.unitsToJudge());
            return intake.report();
        });
    }

    private Closings learnedAnew(Handle handle) {
        LearnedLevels.Closed begun = LearnedLevels.beginGeneration(handle, judging.known(handle).generation() + 1);
        LearnedLevels.Closed closed = OpenDays.closeBefore(handle, today(), begun);
        learned.publishAfterCommit(handle, closed);
        return closed.closings();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    /**
     * Takes in what was read from files.
     *
     * @param rest hands over what else there is, after units and depots
     * @param done told what was done, and to how many
     */
    Intake.Report run(Brought brought, Consumer<Intake> rest, ObjIntConsumer<String> done) throws IOException {
        int given = brought.visits().count();
        if (given >= WORTH_JUDGING_AHEAD) {
            closeDaysThatNothingIsBroughtOf(brought.visits());
        }
        for (int attempt = 0; given >= WORTH_JUDGING_AHEAD && attempt < ATTEMPTS; attempt++) {
            Optional<Gathered> gathered = reader.inTransaction(handle -> Gathered.of(handle, learned.known(handle), today(), brought));
            if (gathered.isEmpty()) {
                break;
            }
            try (JudgedAhead ahead = new JudgedAhead(gathered.get(), done)) {
                Optional<Intake.Report> report = writer.inTransaction(handle -> write(handle, brought, rest, ahead, done));
                if (report.isPresent()) {
                    return report.get();
                }
            }
            brought.visits().backTo(given);
        }
        brought.visits().backTo(given);
        return run(intake -> {
            describe(intake, brought, rest);
            for (int row = 0; row < given; row++) {
                intake.visit(brought.visits().entry(row));
                done.accept("visits stored", 1);
            }
        }, unit -> done.accept("units judged", 1));
    }

    /** The days that are over are closed as the first visit that is saved today would; unless what is brought is to be learned from at that. */
    private void closeDaysThatNothingIsBroughtOf(PackedVisits visits) {
        Optional<LocalDate> through = learned.closedThrough();
        LocalDate today = today();
        boolean isOpen = through.filter(closed -> closed.isBefore(today.minusDays(1))).isPresent();
        for (int row = 0; isOpen && row < visits.count(); row++) {
            isOpen = !(visits.day(row).isAfter(through.get()) && visits.day(row).isBefore(today));
        }
        if (isOpen) {
            judging.learnedUntilYesterday();
        }
    }

    private static void describe(Intake intake, Brought brought, Consumer<Intake> rest) {
        brought.depots().forEach(intake::depot);
        brought.units().values().forEach(intake::unit);
        rest.accept(intake);
    }

    /** @return empty, and nothing is written, when it is to be judged ahead anew */
    private Optional<Intake.Report> write(Handle handle, Brought brought, Consumer<Intake> rest, JudgedAhead ahead, ObjIntConsumer<String> done)
            throws IOException {
        Gathered gathered = ahead.gathered();
        LearnedLevels.Closed known = judging.known(handle);
        if (!ahead.holds(handle, Basis.of(handle, known, today()))) {
            return Optional.empty();
        }
        Set<String> others = gathered.basis().unitsSince(handle);
        Intake intake = new Intake(handle, judging.receipt(known));
        describe(intake, brought, rest);
        intake.visits(gathered, done);
        LearnedLevels.Closed closed = gathered.learnsAnew() ? learnedAhead(handle, known, ahead) : known;
        Set<String> written = ahead.write(handle, others);
        Set<String> left = new HashSet<>(gathered.isHistory() ? Units.idsOfVisited(handle) : intake.unitsToJudge());
        left.removeAll(written);
        new FleetJudging(handle, closed.closings(), unit -> done.accept("units judged", 1)).judge(left.stream().sorted().toList());
        return Optional.of(intake.report());
    }

    private LearnedLevels.Closed learnedAhead(Handle handle, LearnedLevels.Closed known, JudgedAhead ahead) {
        int generation = ahead.gathered().isHistory() ? LearnedLevels.beginGeneration(handle, known.generation() + 1).generation() : known.generation();
        LearnedLevels.Closed closed = LearnedLevels.closeAll(handle, generation, ahead.closings(), ahead.gathered().basis().today().minusDays(1));
        learned.publishAfterCommit(handle, closed);
        return closed;
    }
}
