package org.longsummer.chain.outlook;

/**
 * One weighted state of a unit that its history leaves possible.
 *
 * @param weight posterior probability, 0 or more; those of one unit add up to 1
 * @param variant what is wrong
 * @param severity 0 for nothing; 1 is about what must be repaired
 * @param ratePerSeason growth of severity per season of running; 0 for a fault that came as a step and stays
 */
public record Hypothesis(double weight, Variant variant, double severity, double ratePerSeason) {
    public Hypothesis {
        if (!(weight >= 0 && severity >= 0 && severity < 1e3 && ratePerSeason >= 0 && ratePerSeason < 1e3)) {
            throw new IllegalArgumentException("hypothesis of " + variant + ": weight " + weight + ", severity " + severity + ", rate "
                    + ratePerSeason + " given; all must be 0 or more and finite");
        }
    }

    /** Nothing wrong. */
    public static Hypothesis sound(double weight) {
        return new Hypothesis(weight, Variant.NONE, 0, 0);
    }
}
