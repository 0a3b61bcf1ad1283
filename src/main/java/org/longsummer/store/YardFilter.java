package org.longsummer.store;

import java.time.Instant;
import java.util.Optional;
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
 */
public record YardFilter(Optional<String> depot, Optional<State> state, boolean neverJudged, Optional<Condition> condition,
        Optional<Instant> notVisitedSince, Optional<String> text, boolean outOfServiceToo) {

    /** All units in service. */
    public static final YardFilter ALL = new YardFilter(Optional.empty(), Optional.empty(), false, Optional.empty(), Optional.empty(),
            Optional.empty(), false);

    public YardFilter inDepot(String name) {
        return new YardFilter(Optional.of(name), state, neverJudged, condition, notVisitedSince, text, outOfServiceToo);
    }

    public YardFilter inState(State wanted) {
        return new YardFilter(depot, Optional.of(wanted), neverJudged, condition, notVisitedSince, text, outOfServiceToo);
    }

    public YardFilter onlyNeverJudged() {
        return new YardFilter(depot, state, true, condition, notVisitedSince, text, outOfServiceToo);
    }

    public YardFilter withCondition(Condition wanted) {
        return new YardFilter(depot, state, neverJudged, Optional.of(wanted), notVisitedSince, text, outOfServiceToo);
    }

    public YardFilter notVisitedSince(Instant moment) {
        return new YardFilter(depot, state, neverJudged, condition, Optional.of(moment), text, outOfServiceToo);
    }

    public YardFilter containing(String wanted) {
        return new YardFilter(depot, state, neverJudged, condition, notVisitedSince, Optional.of(wanted), outOfServiceToo);
    }
}
