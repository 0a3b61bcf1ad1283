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

    /** Also where it runs on leap days, over a century that has none at its turn, and before the year the count starts from. */
    @Test
    void countsLeapDays() {
        for (Climate climate : List.of(Climate.SOUTHERN, new Climate(Collections.nCopies(12, 5.0), MonthDay.of(1, 1), MonthDay.of(12, 31)))) {
            SeasonClock clock = new SeasonClock(climate);
            LocalDate first = LocalDate.of(1895, 11, 20);
            LocalDate day = first;
            double hours = 0;
            while (day.isBefore(LocalDate.of(2105, 1, 2))) {
                if (day.getDayOfMonth() == 1 || day.getMonthValue() <= 3) {
                    assertEquals(hours, clock.runHoursBetween(first, day), 1e-6, day.toString());
                }
                hours += climate.runHours(MonthDay.from(day));
                day = day.plusDays(1);
            }
            for (LocalDate from : List.of(LocalDate.of(2023, 2, 20), LocalDate.of(2024, 2, 20), LocalDate.of(2100, 2, 20))) {
                for (int days = 1; days < 800; days++) {
                    double seasons = clock.seasonsBetween(from, from.plusDays(days));
                    boolean ran = climate.runHours(MonthDay.from(from.plusDays(days - 1))) > 0;
                    assertTrue(!ran || clock.dateAfter(from, seasons).equals(from.plusDays(days - 1)), from + " and " + days + " days");
                }
            }
        }
    }

    @Test
    void clocksOfOneClimateAreOneAndOfOthersNot() {
        assertEquals(SeasonClock.NORTHERN, new SeasonClock(Climate.NORTHERN));
        assertEquals(SeasonClock.NORTHERN.hashCode(), new SeasonClock(Climate.NORTHERN).hashCode());
        assertFalse(SeasonClock.NORTHERN.equals(new SeasonClock(Climate.SOUTHERN)));
        assertFalse(SeasonClock.NORTHERN.equals("a clock"));
        assertEquals(Climate.SOUTHERN, new SeasonClock(Climate.SOUTHERN).climate());
    }

    /** First and last day belong to the season, their neighbours do not; also where the season goes over New Year. */
    @Test
    void aSeasonHasItsFirstAndItsLastDay() {
        for (int[] each : new int[][] {{4, 1, 10, 31}, {10, 1, 4, 30}, {6, 15, 6, 15}, {6, 15, 6, 30}}) {
            MonthDay opens = MonthDay.of(each[0], each[1]);
            MonthDay closes = MonthDay.of(each[2], each[3]);
            Climate climate = new Climate(Collections.nCopies(12, 5.0), opens, closes);
            SeasonClock clock = new SeasonClock(climate);
            LocalDate first = opens.atYear(2021);
            LocalDate last = closes.atYear(closes.isBefore(opens) ? 2022 : 2021);
            for (LocalDate day = first.minusDays(40); day.isBefore(last.plusDays(40)); day = day.plusDays(1)) {
                boolean open = !day.isBefore(first) && !day.isAfter(last);
                assertEquals(open, clock.isOpen(day), day + " of " + opens + " to " + closes);
                assertEquals(open ? 5 : 0, climate.runHours(MonthDay.from(day)), 0, day.toString());
                assertEquals(day.isAfter(last) ? last.plusYears(1) : last, clock.seasonEnd(day), day.toString());
                assertEquals(day.isBefore(first) ? first : first.plusYears(1), clock.nextOpening(day), day.toString());
            }
        }
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
        assertEquals(6 * 365, new SeasonClock(cool).runHoursPerYear(), 1e-9, "as it says: 0.6 h for each of ten kelvins above the balance point");
        Climate desert = Climate.fromNormals(Collections.nCopies(12, Temperature.celsius(45)), MonthDay.of(1, 1), MonthDay.of(12, 31));
        assertEquals(16 * 365, new SeasonClock(desert).runHoursPerYear(), 1e-9, "and no more than so many hours a day");
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
        assertThrows(IllegalArgumentException.class, () -> new Climate(Collections.nCopies(11, 5.0), MonthDay.of(4, 1), MonthDay.of(10, 31)));
        assertThrows(IllegalArgumentException.class, () -> SeasonClock.NORTHERN.dateAfter(MAY, Double.POSITIVE_INFINITY));
        List<Double> onlyInMarch = List.of(0.0, 0.0, 24.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        assertThrows(IllegalArgumentException.class, () -> new Climate(onlyInMarch, MonthDay.of(4, 1), MonthDay.of(10, 31)));
        assertThrows(IllegalArgumentException.class, () -> new Climate(onlyInMarch, MonthDay.of(10, 1), MonthDay.of(2, 20)));
        assertEquals(31 * 24, new SeasonClock(new Climate(onlyInMarch, MonthDay.of(3, 1), MonthDay.of(4, 30))).runHoursPerYear(), 1e-9);
        assertEquals(24, new SeasonClock(new Climate(onlyInMarch, MonthDay.of(10, 1), MonthDay.of(3, 1))).runHoursPerYear(), 1e-9);
        assertEquals(24, new SeasonClock(new Climate(onlyInMarch, MonthDay.of(3, 31), MonthDay.of(12, 1))).runHoursPerYear(), 1e-9);
    }
}
