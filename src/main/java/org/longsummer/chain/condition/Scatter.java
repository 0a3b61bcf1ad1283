package org.longsummer.chain.condition;

/**
 * How widely a unit's readings scatter over what instruments and model allow for, as one history finds it: the foreseen variance of
 * what is new at a visit is an estimate itself, and is learned.
 *
 * <p>An uncertainty that is believed to within a fifth is worth ½ (1/5)⁻² = 12.5 degrees of freedom ([jcgm-100-2008] eq. G.3); each
 * visit adds what it says about the variance, at most one.
 *
 * @param ratio variance over the foreseen one
 * @param freedom degrees of freedom
 */
record Scatter(double ratio, double freedom) {
    static final Scatter FORESEEN = new Scatter(1, 12.5);
    /** Nobody reads much better than his instruments, and what scatters wider than this is no scatter. */
    private static final double LEAST = 0.4;
    private static final double MOST = 6;
    /** Teams and meters change: old visits are forgotten at this rate. */
    private static final double MOST_FREEDOM = 40;
    private static final double FARTHEST = 9;

    /**
     * One more reading.
     *
     * @param share of the foreseen variance that is new at the visit, 0 to 1
     * @param square of the surprise over the foreseen variance
     * @param honest probability that the reading is no mistake
     */
    Scatter after(double share, double square, double honest) {
        double weight = honest * share * share;
        double moved = ratio * (1 + honest * share * (Math.min(square, FARTHEST) - 1) / (freedom + weight));
        return new Scatter(Math.max(LEAST, Math.min(MOST, moved)), Math.min(freedom + weight, MOST_FREEDOM));
    }
}
