package org.longsummer.chain.weighing;

import java.time.LocalDate;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.science.economics.PresentValue;

/** The days ahead in steps of thirty: how much is run in each, and what a later amount is worth at its start. */
final class Calendar {
    static final int STEP_DAYS = 30;
    private static final double DAYS_PER_YEAR = 365.25;

    final LocalDate start;
    final int steps;
    /** Seasons of running within each step. */
    final double[] seasons;
    /** Seasons of running from the start to the start of each step; one more for the end. */
    final double[] elapsed;
    /** Run-hours within each step on days in use, h. */
    final double[] runHours;
    /** Days of the open season within each step. */
    final int[] openDays;
    /** Worth at a step's start of an amount at its end. */
    final double perStep;
    /** The same of an amount in its middle. */
    final double perHalfStep;

    Calendar(LocalDate start, SeasonClock clock, PriceList prices) {
        this.start = start;
        steps = Math.max(1, (int) (prices.number(PriceKey.HORIZON_YEARS) * DAYS_PER_YEAR / STEP_DAYS + 0.5));
        seasons = new double[steps];
        elapsed = new double[steps + 1];
        runHours = new double[steps];
        openDays = new int[steps];
        double rate = prices.number(PriceKey.DISCOUNT_RATE);
        perStep = PresentValue.ofSingle(rate, STEP_DAYS / DAYS_PER_YEAR);
        perHalfStep = PresentValue.ofSingle(rate, STEP_DAYS / DAYS_PER_YEAR / 2);
        for (int k = 0; k < steps; k++) {
            fill(k, clock);
        }
    }

    private void fill(int k, SeasonClock clock) {
        LocalDate from = start.plusDays((long) k * STEP_DAYS);
        LocalDate to = from.plusDays(STEP_DAYS);
        runHours[k] = clock.runHoursBetween(from, to);
        seasons[k] = runHours[k] / SeasonClock.HOURS_PER_SEASON;
        elapsed[k + 1] = elapsed[k] + seasons[k];
        for (LocalDate day = from; day.isBefore(to); day = day.plusDays(1)) {
            openDays[k] += clock.isOpen(day) ? 1 : 0;
        }
    }

    /** Calendar years from the start to the start of a step. */
    double years(int k) {
        return k * STEP_DAYS / DAYS_PER_YEAR;
    }

    LocalDate startOf(int k) {
        return start.plusDays((long) k * STEP_DAYS);
    }
}
