package org.longsummer.chain.departure;

import java.util.Set;
import org.longsummer.chain.visit.Work;

/**
 * How long a unit has run since its filter was changed, and what a sound filter's load does by then.
 *
 * @param seasons running seasons since the change; an estimate before the first one
 * @param known the change was recorded
 */
public record FilterAge(double seasons, boolean known) {
    /** Before any change was recorded: somewhere within the first season (practice). */
    public static final FilterAge UNKNOWN = new FilterAge(0.4, false);
    /** A filter's load over a season of running, ln: split up, amps and capacity down (practice). */
    private static final double SPLIT = 0.022;
    private static final double AMPS = -0.006;
    private static final double CAPACITY = -0.02;
    private static final double FULLY_LOADED = 1.5;

    public FilterAge older(double more) {
        return new FilterAge(seasons + more, known);
    }

    public FilterAge after(Set<Work> done) {
        return done.contains(Work.FILTER) ? new FilterAge(0, true) : this;
    }

    public double lnSplit() {
        return SPLIT * Math.min(seasons, FULLY_LOADED);
    }

    public double lnAmps() {
        return AMPS * Math.min(seasons, FULLY_LOADED);
    }

    public double lnCapacity() {
        return CAPACITY * Math.min(seasons, FULLY_LOADED);
    }
}
