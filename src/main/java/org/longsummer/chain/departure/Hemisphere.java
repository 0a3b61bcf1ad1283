package org.longsummer.chain.departure;

import java.util.List;
import org.longsummer.chain.season.Climate;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/**
 * On which half of the earth a unit's summers fall, by the months in which it is checked; northern until shown otherwise.
 *
 * @param northern visits from May to September
 * @param southern visits from November to March
 */
public record Hemisphere(int northern, int southern) {
    public static final Hemisphere UNSEEN = new Hemisphere(0, 0);
    private static final SeasonClock SOUTHERN = new SeasonClock(Climate.SOUTHERN);

    /** As a unit's visits tell it. */
    public static Hemisphere of(List<Visit> visits) {
        Hemisphere seen = UNSEEN;
        for (Visit visit : visits) {
            seen = seen.seen(visit);
        }
        return seen;
    }

    public Hemisphere seen(Visit visit) {
        int month = visit.localDay().getMonthValue();
        return month >= 5 && month <= 9 ? new Hemisphere(northern + 1, southern)
                : month >= 11 || month <= 3 ? new Hemisphere(northern, southern + 1) : this;
    }

    /** The clock of the unit's depot; where nobody said how much units run there, the usual one of this half of the earth. */
    public SeasonClock clock(Unit unit) {
        return unit.clock().orElse(southern > northern ? SOUTHERN : SeasonClock.NORTHERN);
    }
}
