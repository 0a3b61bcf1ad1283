package org.longsummer.chain.condition;

import org.longsummer.chain.departure.Channel;
import org.longsummer.chain.departure.Observation;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.RunTime;

/**
 * Where a mistake that left no fingerprint puts a reading: anywhere in a wide band, or, the commonest, where a unit stands that was
 * read before it had settled. Shares and bands are practice, no published source.
 */
final class Mistakes {
    /** Share of visits with a mistake that was not recognised by itself. */
    static final double SHARE = 0.012;
    private static final double LN_SPLIT_BAND = 1.8;
    private static final double LN_AMPS_BAND = 1.4;
    private static final double UNSETTLED_SHARE = 0.3;
    private static final double UNSETTLED_SPLIT_BAND = 0.7;
    private static final double UNSETTLED_AMPS_BAND = 0.25;
    private static final double CERTAINLY_SETTLED = 25;

    private final Observation observation;
    private final Visit visit;

    Mistakes(Observation observation, Visit visit) {
        this.observation = observation;
        this.visit = visit;
    }

    /** Density of the split and amps departures under a mistake, over the bare class's expectation. */
    double density() {
        boolean split = observation.present()[Channel.SPLIT.ordinal()];
        boolean amps = observation.present()[Channel.AMPS.ordinal()];
        double wide = (split ? 1 / LN_SPLIT_BAND : 1) * (amps ? 1 / LN_AMPS_BAND : 1);
        double early = (split ? inBand(observation.values()[0], UNSETTLED_SPLIT_BAND) : 1)
                * (amps ? inBand(observation.values()[1], UNSETTLED_AMPS_BAND) : 1);
        double share = visit.readings().runTime().map(RunTime::minutes).orElse(15.0) >= CERTAINLY_SETTLED ? 0 : UNSETTLED_SHARE;
        return (1 - share) * wide + share * early;
    }

    private static double inBand(double value, double band) {
        return value < 0.05 && value > -band ? 1 / band : 0;
    }
}
