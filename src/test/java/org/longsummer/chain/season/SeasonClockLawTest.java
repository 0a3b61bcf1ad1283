package org.longsummer.chain.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longsummer.quantity.Temperature;

class SeasonClockLawTest {
    private static final LocalDate MAY = LocalDate.of(2021, 5, 14);

    @Test
    void aYearAtTheDefaultDepotIsOneSeason() {
        assertEquals(1, SeasonClock.NORTHERN.seasonsBetween(MAY, MAY.plusYears(1)), 1e-12);
        assertEquals(1194, SeasonClock.NORTHERN.runHoursPerYear(), 1e-9);
    }

    @Test
    void countsTheSameAsAddingDayByDay() {
        LocalDate day = LocalDate.of(1995, 3, 20);
        double hours = 0;
        while (day.isBefore(LocalDate.of(2029, 8, 2))) {
            hours += Climate.NORTHERN.runHours(MonthDay.from(day));
            day = day.plusDays(1);
        }
        assertEquals(hours, SeasonClock.NORTHERN.runHoursBetween(LocalDate.of(1995, 3, 20), day), 1e-6);
    }

    @Test
    void standsStillInWinter() {
        assertEquals(0, SeasonClock.NORTHERN.seasonsBetween(LocalDate.of(2020, 11, 1), LocalDate.of(2021, 4, 1)), 0);
    }

    @Test
    void theSouthernYearIsTheNorthernSixMonthsLater() {
        double north = SeasonClock.NORTHERN.runHoursBetween(LocalDate.of(2021, 7, 1), LocalDate.of(2021, 8, 1));
        double south = new SeasonClock(Climate.SOUTHERN).runHoursBetween(LocalDate.of(2022, 1, 1), LocalDate.of(2022, 2, 1));
        assertEquals(north, south, 1e-9);
        assertTrue(new SeasonClock(Climate.SOUTHERN).isOpen(LocalDate.of(2022, 1, 1)));
    }

    @Test
    void dateAfterIsTheInverse() {
        for (SeasonClock clock : List.of(SeasonClock.NORTHERN, new SeasonClock(Climate.SOUTHERN))) {
            for (int day = 0; day < 1500; day += 7) {
                LocalDate from = MAY.plusDays(day);
                for (double seasons = 0.01; seasons < 6; seasons += 0.37) {
                    LocalDate reached = clock.dateAfter(from, seasons);
                    assertTrue(clock.seasonsBetween(from, reached.plusDays(1)) >= seasons - 1e-9, from + " " + seasons + " " + reached);
                    assertTrue(clock.seasonsBetween(from, reached) < seasons + 1e-9, from + " " + seasons + " " + reached);
                }
            }
        }
    }

    @Test
    void dateAfterNothingIsTheSameDayAndAfterVeryMuchStillADate() {
        assertEquals(MAY, SeasonClock.NORTHERN.dateAfter(MAY, 0));
        assertEquals(9999, SeasonClock.NORTHERN.dateAfter(MAY, 1e9).getYear());
        assertThrows(IllegalArgumentException.class, () -> SeasonClock.NORTHERN.dateAfter(MAY, -0.1));
        assertThrows(IllegalArgumentException.class, () -> SeasonClock.NORTHERN.dateAfter(MAY, Double.NaN));
    }

    @Test
    void knowsTheSeasonsEndAndTheNextOpening() {
        assertEquals(LocalDate.of(2021, 10, 31), SeasonClock.NORTHERN.seasonEnd(MAY));
        assertEquals(LocalDate.of(2022, 10, 31), SeasonClock.NORTHERN.seasonEnd(LocalDate.of(2021, 12, 24)));
        assertEquals(LocalDate.of(2022, 4, 1), SeasonClock.NORTHERN.nextOpening(MAY));
        SeasonClock south = new SeasonClock(Climate.SOUTHERN);
        assertEquals(LocalDate.of(2022, 4, 30), south.seasonEnd(LocalDate.of(2021, 11, 5)));
        assertEquals(LocalDate.of(2022, 4, 30), south.seasonEnd(LocalDate.of(2022, 2, 5)));
        assertEquals(LocalDate.of(2022, 4, 30), south.seasonEnd(LocalDate.of(2021, 7, 5)));
    }

    @Test
    void aSeasonThatNeverClosesEndsWithTheYear() {
        SeasonClock clock = new SeasonClock(new Climate(Collections.nCopies(12, 5.0), MonthDay.of(1, 1), MonthDay.of(12, 31)));
        assertEquals(LocalDate.of(2021, 12, 31), clock.seasonEnd(MAY));
        assertEquals(LocalDate.of(2022, 1, 1), clock.nextOpening(MAY));
    }

    @Test
    void warmerNormalsNeverRunLess() {
        Climate cool = Climate.fromNormals(Collections.nCopies(12, Temperature.celsius(18)), MonthDay.of(1, 1), MonthDay.of(12, 31));
        Climate warm = Climate.fromNormals(Collections.nCopies(12, Temperature.celsius(28)), MonthDay.of(1, 1), MonthDay.of(12, 31));
        assertTrue(new SeasonClock(warm).runHoursPerYear() > new SeasonClock(cool).runHoursPerYear());
    }

    @Test
    void refusesAClimateThatNeverRunsAndSaysAllThatIsWrong() {
        assertThrows(IllegalArgumentException.class,
                () -> new Climate(Collections.nCopies(12, 0.0), MonthDay.of(4, 1), MonthDay.of(10, 31)));
        String message = assertThrows(IllegalArgumentException.class, () -> new Climate(
                List.of(-1.0, 25.0, 0.0, 2.0, 4.0, 7.0, 9.0, 9.0, 6.0, 2.0, 0.0, 0.0), MonthDay.of(4, 1), MonthDay.of(10, 31)))
                .getMessage();
        assertTrue(message.contains("month 1: -1.0") && message.contains("month 2: 25.0"), message);
        assertFalse(message.contains("none within"), message);
    }
}
