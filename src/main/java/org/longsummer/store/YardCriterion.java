package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;

/** One thing that narrows the yard. */
public sealed interface YardCriterion {
    /** Units of this depot. */
    record AtDepot(String name) implements YardCriterion {}

    /** Units whose last judged visit says this; {@code RETAKE}: units whose last reading is to be retaken. */
    record InState(State state) implements YardCriterion {}

    /** Units that were never judged. */
    record NeverJudged() implements YardCriterion {}

    /** Units whose likely condition is this. */
    record Likely(Condition condition) implements YardCriterion {}

    /** Units whose likely condition began, most likely, on this day or later. */
    record BegunSince(LocalDate day) implements YardCriterion {}

    /** Units without a visit since then. */
    record NotVisitedSince(Instant moment) implements YardCriterion {}

    /** Units that were not checked for the season which is open, or opens soon, where they stand. */
    record NotCheckedForSeason(LocalDate today) implements YardCriterion {
        /** A check so shortly before the season opens is that season's check. */
        private static final int EARLY_DAYS = 60;

        LocalDate lastOpening() {
            return today.plusDays(EARLY_DAYS);
        }
    }

    /** Units whose next check is due before this day, and those never visited. */
    record DueBefore(LocalDate day) implements YardCriterion {}

    /** Units whose filter has run for longer than its interval on this day. */
    record FilterDueBefore(LocalDate day) implements YardCriterion {}

    /** Units whose warranty ends within these days, both included. */
    record WarrantyEnds(LocalDate from, LocalDate through) implements YardCriterion {}

    /** Units for which work is planned and still to be done, or for which none is. */
    record WorkPlanned(boolean planned) implements YardCriterion {}

    /** Units that were installed before this day. */
    record InstalledBefore(LocalDate day) implements YardCriterion {}

    /** Label, id, serial, vehicle, owner, make or model contain each of these words; look-alikes (O and 0, I and 1, S and 5) are forgiven. */
    record Containing(String text) implements YardCriterion {}
}
