package org.longsummer.chain.condition;

import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.season.Climate;
import org.longsummer.chain.visit.Visit;

/** On which half of the earth a unit's summers fall, by the months in which it is checked; northern until shown otherwise. */
final class Hemisphere {
    private static final SeasonClock SOUTHERN = new SeasonClock(Climate.SOUTHERN);

    private int northern;
    private int southern;

    void see(Visit visit) {
        int month = visit.localDay().getMonthValue();
        if (month >= 5 && month <= 9) {
            northern++;
        } else if (month >= 11 || month <= 3) {
            southern++;
        }
    }

    SeasonClock clock() {
        return southern > northern ? SOUTHERN : SeasonClock.NORTHERN;
    }

    Hemisphere copy() {
        Hemisphere copy = new Hemisphere();
        copy.northern = northern;
        copy.southern = southern;
        return copy;
    }
}
