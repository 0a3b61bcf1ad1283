package org.longsummer.store;

import java.time.Instant;
import java.util.Optional;
import org.longsummer.access.Reach;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;

/**
 * Which units of the yard to list; what is absent does not narrow.
 *
 * @param depot units of this depot
 * @param state units whose last judged visit says this; {@code RETAKE}: units whose last reading is to be retaken
 * @param neverJudged only units that were never judged
 * @param condition units whose likely condition is this
 * @param notVisitedSince units without a visit since then
 * @param text label, id, serial, vehicle, owner, make or model contain this; look-alikes in serials are forgiven
 * @param outOfServiceToo units laid up or sold are listed too
 * @param reach only units that somebody who sees so far may see
 */
public record YardFilter(Optional<String> depot, Optional<State> state, boolean neverJudged, Optional<Condition> condition,
        Optional<Instant> notVisitedSince, Optional<String> text, boolean outOfServiceToo, Reach reach) {

    /** All units in service. */
    public static final YardFilter ALL = new YardFilter(Optional.empty(), Optional.empty(), false, Optional.empty(), Optional.empty(),
            Optional.empty(), false, Reach.EVERYWHERE);

    /** Only what somebody may see, whatever else is asked for. */
    public YardFilter within(Reach limit) {
        return new YardFilter(depot, state, neverJudged, condition, notVisitedSince, text, outOfServiceToo, reach.within(limit));
    }

    public YardFilter inDepot(String name) {
        return new YardFilter(Optional.of(name), state, neverJudged, condition, notVisitedSince, text, outOfServiceToo, reach);
    }

    public YardFilter inState(State wanted) {
        return new YardFilter(depot, Optional.of(wanted), neverJudged, condition, notVisitedSince, text, outOfServiceToo, reach);
    }

    public YardFilter onlyNeverJudged() {
        return new YardFilter(depot, state, true, condition, notVisitedSince, text, outOfServiceToo, reach);
    }

    public YardFilter withCondition(Condition wanted) {
        return new YardFilter(depot, state, neverJudged, Optional.of(wanted), notVisitedSince, text, outOfServiceToo, reach);
    }

    public YardFilter notVisitedSince(Instant moment) {
        return new YardFilter(depot, state, neverJudged, condition, Optional.of(moment), text, outOfServiceToo, reach);
    }

    public YardFilter containing(String wanted) {
        return new YardFilter(depot, state, neverJudged, condition, notVisitedSince, Optional.of(wanted), outOfServiceToo, reach);
    }
}
