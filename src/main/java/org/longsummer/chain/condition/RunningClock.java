package org.longsummer.chain.condition;

import java.time.LocalDate;

/** How much of a season of running lies between two days: roof units run in the warm months. */
final class RunningClock {
    private static final double[] MONTHS = {0.01, 0.01, 0.03, 0.08, 0.13, 0.17, 0.2, 0.2, 0.13, 0.08, 0.03, 0.01};
    private static final double YEAR = 1.08;

    private RunningClock() {}

    static double seasonsBetween(LocalDate from, LocalDate to) {
        return Math.max(0, at(to) - at(from));
    }

    private static double at(LocalDate day) {
        double sum = day.getYear();
        for (int m = 1; m < day.getMonthValue(); m++) {
            sum += MONTHS[m - 1] / YEAR;
        }
        return sum + MONTHS[day.getMonthValue() - 1] / YEAR * (day.getDayOfMonth() - 1) / day.lengthOfMonth();
    }
}
