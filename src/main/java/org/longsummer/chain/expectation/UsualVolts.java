package org.longsummer.chain.expectation;

import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Visit;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * The shore voltage at which a unit usually runs, from its own earlier readings, for visits at which nobody read it.
 *
 * @param sum of its readings, V
 * @param count of its readings
 */
public record UsualVolts(double sum, int count) {
    public static final UsualVolts UNKNOWN = new UsualVolts(0, 0);
    /** Practice: shore power under load, its spread from place to place and from visit to visit, for a 115 V plate. */
    private static final double MEAN = 116;
    private static final double PLACE_TO_PLACE = 2.8;
    private static final double VISIT_TO_VISIT = 2.3;

    /** With one more visit's reading, if it was taken on shore power. */
    public UsualVolts with(Visit visit) {
        return visit.readings().volts().filter(v -> visit.powerSource() != PowerSource.GENERATOR)
                .map(v -> new UsualVolts(sum + v.volts(), count + 1)).orElse(this);
    }

    /** What the next visit's volts will be: V and its standard uncertainty. */
    Uncertain next(double scale) {
        double prior = 1 / (PLACE_TO_PLACE * PLACE_TO_PLACE);
        double own = count / (VISIT_TO_VISIT * VISIT_TO_VISIT);
        double mean = (prior * MEAN * scale + (count == 0 ? 0 : own * sum / count)) / (prior + own);
        return new Uncertain(mean, scale * Math.sqrt(1 / (prior + own) + VISIT_TO_VISIT * VISIT_TO_VISIT));
    }
}
