package org.longsummer.science.statistics;

/**
 * Weibull distribution of life: S(t) = exp(-((t - a)/l)^k) for t above the location a.
 *
 * <p>Unit-blind: location and scale share the unit of time of the caller. Source: NIST/SEMATECH e-Handbook of Statistical Methods,
 * 8.1.6.2 [nist-ehandbook].
 *
 * @param shape k, above 0; above 1 when things wear out
 * @param scale l, above 0
 * @param location a, the time before which nothing fails; 0 for the two-parameter form
 */
public record Weibull(double shape, double scale, double location) {
    public Weibull {
        if (!(shape > 0 && shape < 1e3 && scale > 0 && scale < 1e12 && Math.abs(location) < 1e12)) {
            throw new IllegalArgumentException("Weibull shape " + shape + ", scale " + scale + ", location " + location
                    + " given; shape and scale must be above 0 and all finite");
        }
    }

    public Weibull(double shape, double scale) {
        this(shape, scale, 0);
    }

    /** The one that has these two survivals, for example 0.9 at 5 years and 0.1 at 15. */
    public static Weibull through(double earlier, double survivalEarlier, double later, double survivalLater) {
        double shape = Math.log(Math.log(survivalLater) / Math.log(survivalEarlier)) / Math.log(later / earlier);
        return new Weibull(shape, later / Math.pow(-Math.log(survivalLater), 1 / shape));
    }

    /** Probability of living longer than t. */
    public double survival(double t) {
        return Math.exp(-cumulativeHazard(t));
    }

    /** Rate of failing at t of what still lives, per unit of time; 0 before the location, and infinite just there for a shape below 1. */
    public double hazard(double t) {
        double x = t - location;
        return x < 0 ? 0 : shape / scale * Math.pow(x / scale, shape - 1);
    }

    /** -ln S(t). */
    public double cumulativeHazard(double t) {
        return Math.pow(Math.max(0, t - location) / scale, shape);
    }

    /** Probability of failing within a span, given that it lived to an age. */
    public double failingWithin(double span, double age) {
        double added = cumulativeHazard(age + span) - cumulativeHazard(age);
        return added < 1e-5 ? added * (1 - added / 2) : 1 - Math.exp(-added);
    }

    /** Time by which a share p (0 to below 1) has failed. */
    public double quantile(double p) {
        return location + scale * Math.pow(-Math.log(1 - p), 1 / shape);
    }

    public double median() {
        return quantile(0.5);
    }

    public double mean() {
        return location + scale * Gamma.of(1 + 1 / shape);
    }

    /** The same with all times multiplied. */
    public Weibull stretched(double factor) {
        return new Weibull(shape, scale * factor, location * factor);
    }

    /** Time still to live that half of those of an age reach. */
    public double medianResidual(double age) {
        double reached = cumulativeHazard(age) + Math.log(2);
        return location + scale * Math.pow(reached, 1 / shape) - age;
    }
}
