package org.longsummer.chain.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.Year;

/**
 * Counts seasons of running: time that stands still in winter and runs fastest in July.
 *
 * <p>One season is a fixed number of run-hours, the year of the default northern depot, so that a depot which runs twice as long ages
 * its units twice as fast. A look-up of one day or the way back is a few array reads.
 */
public final class SeasonClock {
    /** Run-hours of one season, h: those of a year without leap day at {@link Climate#NORTHERN}. */
    public static final double HOURS_PER_SEASON = 1194;
    /** The clock of the default northern depot. */
    public static final SeasonClock NORTHERN = new SeasonClock(Climate.NORTHERN);

    private static final int EPOCH = 1970;
    private static final int LATEST_YEAR = 9999;

    private final Climate climate;
    /** Run-hours from New Year to the start of each day, last entry: the whole year. */
    private final double[] common = new double[366];
    private final double[] leap = new double[367];

    public SeasonClock(Climate climate) {
        this.climate = climate;
        fill(common, 2001);
        fill(leap, 2000);
    }

    public Climate climate() {
        return climate;
    }

    /** Clocks of the same climate are the same. */
    @Override
    public boolean equals(Object other) {
        return other instanceof SeasonClock clock && climate.equals(clock.climate);
    }

    @Override
    public int hashCode() {
        return climate.hashCode();
    }

    /** Seasons of running from the start of one day to the start of another; negative when the second is earlier. */
    public double seasonsBetween(LocalDate from, LocalDate to) {
        return (hours(to) - hours(from)) / HOURS_PER_SEASON;
    }

    /** Run-hours from the start of one day to the start of another, h. */
    public double runHoursBetween(LocalDate from, LocalDate to) {
        return hours(to) - hours(from);
    }

    /** Run-hours of a year without leap day, h. */
    public double runHoursPerYear() {
        return common[365];
    }

    /**
     * The first day at whose end at least so many seasons have been run; the inverse of {@link #seasonsBetween} to a day.
     *
     * @param seasons 0 or more
     * @return {@code from} for 0; never beyond the year 9999
     * @throws IllegalArgumentException for a negative or not finite number of seasons
     */
    public LocalDate dateAfter(LocalDate from, double seasons) {
        if (!(seasons >= 0 && seasons < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("seasons of running: " + seasons + " given; give 0 or more");
        }
        if (seasons == 0) {
            return from;
        }
        double target = hours(from) + seasons * HOURS_PER_SEASON * (1 - 1e-12);
        int year = yearOf(target, from.getYear());
        if (year > LATEST_YEAR) {
            return LocalDate.of(LATEST_YEAR, 12, 31);
        }
        return LocalDate.ofYearDay(year, lastBelow(table(year), target - hoursAtNewYear(year)) + 1);
    }

    /** Whether the season is open on that day. */
    public boolean isOpen(LocalDate day) {
        return climate.isOpen(MonthDay.of(day.getMonthValue(), day.getDayOfMonth()));
    }

    /** Last day of the season that is open on that day, or of the next one; 31 December where the season never closes. */
    public LocalDate seasonEnd(LocalDate day) {
        if (neverCloses()) {
            return LocalDate.of(day.getYear(), 12, 31);
        }
        LocalDate open = isOpen(day) ? day : nextOpening(day);
        LocalDate closes = on(climate.closes(), open.getYear());
        return closes.isBefore(open) ? on(climate.closes(), open.getYear() + 1) : closes;
    }

    /** First day of the first season that opens after that day. */
    public LocalDate nextOpening(LocalDate day) {
        MonthDay opens = neverCloses() ? MonthDay.of(1, 1) : climate.opens();
        LocalDate thisYear = on(opens, day.getYear());
        return thisYear.isAfter(day) ? thisYear : on(opens, day.getYear() + 1);
    }

    private boolean neverCloses() {
        LocalDate dayAfter = on(climate.closes(), 2001).plusDays(1);
        return MonthDay.of(dayAfter.getMonthValue(), dayAfter.getDayOfMonth()).equals(climate.opens());
    }

    private double hours(LocalDate day) {
        return hoursAtNewYear(day.getYear()) + table(day.getYear())[day.getDayOfYear() - 1];
    }

    private double hoursAtNewYear(int year) {
        int leapYears = leapYearsBefore(year) - leapYearsBefore(EPOCH);
        return (year - EPOCH - leapYears) * common[365] + leapYears * leap[366];
    }

    private double[] table(int year) {
        return Year.isLeap(year) ? leap : common;
    }

    /** The year in which the count reaches the target; from a close guess, so at most a few steps. */
    private int yearOf(double target, int notBefore) {
        double guess = EPOCH + target / common[365];
        int year = (int) Math.max(notBefore, Math.min(LATEST_YEAR + 1, Math.floor(guess) - 1));
        while (year <= LATEST_YEAR && hoursAtNewYear(year + 1) < target) {
            year++;
        }
        return year;
    }

    /** Largest index whose entry is below the target. */
    private static int lastBelow(double[] table, double target) {
        int low = 0;
        int high = table.length - 1;
        while (low < high - 1) {
            int middle = (low + high) >>> 1;
            if (table[middle] < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void fill(double[] table, int year) {
        LocalDate day = LocalDate.of(year, 1, 1);
        for (int i = 1; i < table.length; i++) {
            table[i] = table[i - 1] + climate.runHours(MonthDay.of(day.getMonthValue(), day.getDayOfMonth()));
            day = day.plusDays(1);
        }
    }

    private static int leapYearsBefore(int year) {
        int y = year - 1;
        return Math.floorDiv(y, 4) - Math.floorDiv(y, 100) + Math.floorDiv(y, 400);
    }

    private static LocalDate on(MonthDay day, int year) {
        return day.atYear(year);
    }
}
