package org.longsummer.store;

import java.util.List;
import java.util.Optional;
import org.longsummer.quantity.Money;

/**
 * How ready a depot is for the season.
 *
 * @param depot its name; empty for units without one
 * @param units in service
 * @param notChecked of these, not checked for the season
 * @param checkedLately of these, read within the last four weeks and checked for the season
 * @param act to be acted on
 * @param overdue next check overdue, or never visited
 * @param filterOverdue filter past its interval
 * @param warrantyEnding warranty about to end
 * @param outOfService laid up, in none of the numbers before
 * @param planned work that is planned and still to be done
 */
public record Readiness(String depot, int units, int notChecked, int checkedLately, int act, int overdue, int filterOverdue, int warrantyEnding,
        int outOfService, Planned planned) {
    /** Over so many days the present pace is taken. */
    public static final int PACE_DAYS = 28;

    /**
     * Planned work together.
     *
     * @param works how many plans
     * @param withoutPrice of these, without a price
     * @param prices sums, one a currency
     */
    public record Planned(int works, int withoutPrice, List<Money> prices) {
        static final Planned NOTHING = new Planned(0, 0, List.of());
    }

    public int checked() {
        return units - notChecked;
    }

    /** In how many days the rest is checked at the pace of the last four weeks; absent when nothing was checked in them, or nothing is left. */
    public Optional<Integer> daysLeft() {
        return notChecked == 0 || checkedLately == 0 ? Optional.empty()
                : Optional.of((int) Math.ceil((double) notChecked * PACE_DAYS / checkedLately));
    }
}
