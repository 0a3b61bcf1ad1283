package org.longsummer.chain.due;

import java.time.LocalDate;

/**
 * The next check that is due.
 *
 * @param on the last day on which it is still in time
 * @param reason why then
 */
public record NextCheck(LocalDate on, Reason reason) {

    /** Why a check is due; the earlier ones stand before the later ones when they fall on one day. */
    public enum Reason {
        RETAKE("the last reading is to be retaken"),
        AFTER_WORK("read again after the work"),
        ACT("it is to be acted on, then read again"),
        FILTER_DIRTY("the filter was found dirty and left"),
        DRIFTING("to see whether it goes on drifting"),
        FILTER_AGE("its filter has run for a season"),
        SEASON("the season’s check");

        private final String phrase;

        Reason(String phrase) {
            this.phrase = phrase;
        }

        /** The words on a screen. */
        public String phrase() {
            return phrase;
        }
    }
}
