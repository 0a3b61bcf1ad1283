package org.longsummer.chain.due;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.due.NextCheck.Reason;
import org.longsummer.chain.season.Climate;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Work;

/** When a check is due: one a season, sooner when the last one asks for it. The periods are ours, after common practice. */
class CheckPlannerPracticeTest {
    private static final Climate WARM = new Climate(List.of(4.0, 5.0, 7.0, 9.0, 11.0, 13.0, 14.0, 14.0, 12.0, 9.0, 6.0, 4.0), MonthDay.of(1, 1),
            MonthDay.of(12, 31));

    private static void due(String day, Reason reason, Season season) {
        assertEquals(new NextCheck(LocalDate.parse(day), reason), season.next());
    }

    @Test
    void aUnitNeverVisitedIsLateOnAnyDay() {
        assertTrue(CheckPlanner.after(List.of()).isEmpty());
    }

    @Test
    void aSteadyUnitIsCheckedOnceASeason() {
        due("2031-04-01", Reason.SEASON, new Season().sound("2030-06-20"));
        due("2031-04-01", Reason.SEASON, new Season().sound("2030-10-05"));
        due("2031-04-01", Reason.SEASON, new Season().sound("2029-06-20").sound("2030-03-12"));
        due("2030-04-01", Reason.SEASON, new Season().sound("2029-06-20").sound("2029-07-20").sound("2030-01-10"));
    }

    @Test
    void theSeasonIsTheDepots() {
        due("2030-10-01", Reason.SEASON, new Season().at(Climate.SOUTHERN).sound("2030-01-10"));
        due("2030-10-01", Reason.SEASON, new Season().sound("2029-12-10").sound("2030-01-10"));
    }

    @Test
    void aReadingToBeRetakenIsDueWithinAWeek() {
        due("2030-06-27", Reason.RETAKE, new Season().sound("2030-05-20").visit("2030-06-20", 59.3, 0.1, FilterLook.NOT_LOOKED, Set.of()));
    }

    @Test
    void workIsReadAgain() {
        due("2030-06-27", Reason.AFTER_WORK, new Season().visit("2030-06-20", 59.3, 12.1, FilterLook.DIRTY, Set.of(Work.FILTER)));
    }

    @Test
    void aDirtyFilterThatWasLeftIsDueWithinAWeek() {
        due("2030-06-27", Reason.FILTER_DIRTY, new Season().visit("2030-06-20", 59.3, 12.1, FilterLook.DIRTY, Set.of()));
    }

    @Test
    void whereUnitsRunAllYearTheFilterComesBeforeTheSeason() {
        NextCheck next = new Season().at(WARM).visit("2030-06-20", 59.3, 12.1, FilterLook.CLEAN, Set.of()).next();
        assertEquals(Reason.FILTER_AGE, next.reason());
        assertEquals(new SeasonClock(WARM).dateAfter(LocalDate.of(2030, 6, 20), 1), next.on());
        assertTrue(next.on().isBefore(LocalDate.of(2030, 10, 1)), next.on().toString());
    }

    @Test
    void aUnitToBeActedOnIsDueWithinAFortnight() {
        Season season = new Season().sound("2029-05-20").sound("2029-06-20").sound("2029-07-20").sound("2029-08-20");
        for (String day : List.of("2030-05-20", "2030-06-20", "2030-07-20")) {
            season.visit(day, 60.5, 15.3, FilterLook.NOT_LOOKED, Set.of());
        }
        assertEquals(State.ACT, season.verdicts().get(6).state());
        due("2030-08-03", Reason.ACT, season);
        due("2030-07-27", Reason.AFTER_WORK, season.visit("2030-07-20", 60.5, 15.3, FilterLook.NOT_LOOKED, Set.of(Work.CONDENSER_COIL)));
    }
}
