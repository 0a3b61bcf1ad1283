package org.longsummer.chain.due;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.departure.Hemisphere;
import org.longsummer.chain.due.NextCheck.Reason;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;

/** Says when a unit is to be checked next, from all that its visits said. The periods are ours, in the order of common practice. */
public final class CheckPlanner {
    /** A reading that could not be judged, or that has to show what work did, is taken again within a week. */
    private static final int SOON_DAYS = 7;
    /** Work that the readings ask for is arranged within two. */
    private static final int ACT_DAYS = 14;
    /** Running after which a drift shows or not: about 180 h, three weeks of a northern July. */
    private static final double DRIFT_SEASONS = 0.15;
    /** A filter is looked at, at the latest, after one season of running. */
    private static final double FILTER_SEASONS = 1.0;
    /** A check so shortly before the season opens is that season's check. */
    private static final int EARLY_DAYS = 60;

    private CheckPlanner() {}

    /**
     * The next check of a unit.
     *
     * @param verdicts of all its visits that count, in order of time
     * @return empty when it was never visited: then any day is late
     */
    public static Optional<NextCheck> after(List<Verdict> verdicts) {
        if (verdicts.isEmpty()) {
            return Optional.empty();
        }
        Verdict last = verdicts.get(verdicts.size() - 1);
        SeasonClock clock = clock(verdicts);
        NextCheck next = bySeason(last, clock);
        for (Optional<NextCheck> other : List.of(byFilterAge(verdicts, clock), byState(verdicts, clock), byFilter(last), byWork(last), byRetake(last))) {
            if (other.isPresent() && !other.get().on().isAfter(next.on())) {
                next = other.get();
            }
        }
        return Optional.of(next);
    }

    /**
     * The opening of the season for which the next check of a unit is, whatever else asks for one earlier: the first that opens after its
     * last check, which is the last visit that could be judged.
     *
     * @param verdicts of all its visits that count, in order of time
     * @return empty when it was never checked
     */
    public static Optional<LocalDate> seasonAfter(List<Verdict> verdicts) {
        for (int i = verdicts.size() - 1; i >= 0; i--) {
            if (verdicts.get(i).state() != State.RETAKE) {
                return Optional.of(bySeason(verdicts.get(i), clock(verdicts)).on());
            }
        }
        return Optional.empty();
    }

    /**
     * The day by which a unit's filter has run for its interval.
     *
     * @param verdicts of all its visits that count, in order of time
     * @return empty when nobody noted a clean or new filter
     */
    public static Optional<LocalDate> filterAfter(List<Verdict> verdicts) {
        return verdicts.isEmpty() ? Optional.empty() : byFilterAge(verdicts, clock(verdicts)).map(NextCheck::on);
    }

    private static SeasonClock clock(List<Verdict> verdicts) {
        return Hemisphere.of(verdicts.stream().map(Verdict::visit).toList()).clock(verdicts.get(verdicts.size() - 1).departure().screening().unit());
    }

    private static NextCheck bySeason(Verdict last, SeasonClock clock) {
        return new NextCheck(clock.nextOpening(last.visit().localDay().plusDays(EARLY_DAYS)), Reason.SEASON);
    }

    private static Optional<NextCheck> byRetake(Verdict last) {
        return last.state() == State.RETAKE ? soon(last, Reason.RETAKE) : Optional.empty();
    }

    private static Optional<NextCheck> byWork(Verdict last) {
        return last.visit().workDone().isEmpty() ? Optional.empty() : soon(last, Reason.AFTER_WORK);
    }

    private static Optional<NextCheck> byFilter(Verdict last) {
        Visit visit = last.visit();
        return visit.filter() == FilterLook.DIRTY && !visit.workDone().contains(Work.FILTER) ? soon(last, Reason.FILTER_DIRTY)
                : Optional.empty();
    }

    private static Optional<NextCheck> soon(Verdict last, Reason reason) {
        return Optional.of(new NextCheck(last.visit().localDay().plusDays(SOON_DAYS), reason));
    }

    /** By the last visit that could be judged; work done since then asks for a reading anyway. */
    private static Optional<NextCheck> byState(List<Verdict> verdicts, SeasonClock clock) {
        for (int i = verdicts.size() - 1; i >= 0; i--) {
            Verdict verdict = verdicts.get(i);
            LocalDate day = verdict.visit().localDay();
            if (verdict.visit().workDone().contains(Work.UNIT_REPLACED)) {
                return Optional.empty();
            }
            switch (verdict.state()) {
                case ACT:
                    return Optional.of(new NextCheck(day.plusDays(ACT_DAYS), Reason.ACT));
                case DRIFTING:
                    return Optional.of(new NextCheck(clock.dateAfter(day, DRIFT_SEASONS), Reason.DRIFTING));
                case STEADY:
                    return Optional.empty();
                case RETAKE:
                    break;
            }
        }
        return Optional.empty();
    }

    /** From the last day on which the filter was new or seen clean; nothing where that was never noted. */
    private static Optional<NextCheck> byFilterAge(List<Verdict> verdicts, SeasonClock clock) {
        for (int i = verdicts.size() - 1; i >= 0; i--) {
            Visit visit = verdicts.get(i).visit();
            if (visit.filter() == FilterLook.CLEAN || visit.workDone().contains(Work.FILTER)
                    || visit.workDone().contains(Work.UNIT_REPLACED)) {
                return Optional.of(new NextCheck(clock.dateAfter(visit.localDay(), FILTER_SEASONS), Reason.FILTER_AGE));
            }
        }
        return Optional.empty();
    }
}
