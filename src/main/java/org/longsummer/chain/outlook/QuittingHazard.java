package org.longsummer.chain.outlook;

/**
 * How likely a unit quits: from its age by the life curve, and from its fault by severity.
 *
 * <p>The fault's part is a hazard per season of running of c s^2 at severity s, added to the age's. The coefficients are ours (there is
 * no published one for roof units): a worn compressor, a low charge or a weak capacitor at the severity that must be repaired has about
 * an even chance of quitting within the season; a dirty evaporator or filter ices and a dirty condenser trips one time in ten; a leaking
 * divider hardly does anything.
 *
 * <p>Of what ends lives by the curve, only a share comes without a fault that readings would show first. A unit that its history calls
 * sound is at that share now; as time passes since, it fades back to the whole curve.
 */
public final class QuittingHazard {
    /** Share of ends that come without a sign. Ours. */
    public static final double WITHOUT_SIGN = 0.15;
    /** Seasons of running in which "was sound" loses most of its worth: about what a new fault takes to grow. Ours. */
    private static final double FADING = 1.5;
    private static final double[] AT_SEVERITY_ONE = coefficients();

    private QuittingHazard() {}

    /** Hazard per season of running of a fault of a severity, beyond the age's. */
    public static double ofFault(Variant variant, double severity) {
        return AT_SEVERITY_ONE[variant.ordinal()] * severity * severity;
    }

    /** Cumulative hazard of a growing fault over a span of running; severity may grow beyond the tables. */
    public static double ofFault(Variant variant, double severity, double ratePerSeason, double seasons) {
        double end = severity + ratePerSeason * seasons;
        return AT_SEVERITY_ONE[variant.ordinal()] * seasons * (severity * severity + severity * end + end * end) / 3;
    }

    /** Cumulative hazard of ageing over a span of running, of a unit that nobody judged. */
    public static double ofAge(LifeCurve life, double ageYears, double seasons) {
        return life.years().cumulativeHazard(ageYears + seasons) - life.years().cumulativeHazard(ageYears);
    }

    /** Probability of quitting within a span of running, under one hypothesis. */
    public static double probability(Hypothesis hypothesis, LifeCurve life, double ageYears, double seasons) {
        double age = ofAge(life, ageYears, seasons);
        if (hypothesis.variant() == Variant.NONE) {
            return share(age * (WITHOUT_SIGN + (1 - WITHOUT_SIGN) * faded(seasons)));
        }
        return share(age * WITHOUT_SIGN
                + ofFault(hypothesis.variant(), hypothesis.severity(), hypothesis.ratePerSeason(), seasons));
    }

    /** Probability from a cumulative hazard. */
    public static double share(double cumulative) {
        return cumulative < 1e-5 ? cumulative : 1 - Math.exp(-cumulative);
    }

    /** Mean over the span of 1 - exp(-t/fading). */
    private static double faded(double seasons) {
        double x = seasons / FADING;
        return x < 1e-4 ? x / 2 : 1 - (1 - Math.exp(-x)) / x;
    }

    private static double[] coefficients() {
        double[] atOne = new double[Variant.COUNT];
        atOne[Variant.COMPRESSOR.ordinal()] = 0.6;
        atOne[Variant.CAPACITOR.ordinal()] = 0.5;
        atOne[Variant.REFRIGERANT.ordinal()] = 0.4;
        atOne[Variant.FAN_DRAG.ordinal()] = 0.25;
        atOne[Variant.CONDENSER_COIL.ordinal()] = 0.08;
        atOne[Variant.EVAPORATOR_COIL.ordinal()] = 0.12;
        atOne[Variant.FILTER.ordinal()] = 0.12;
        atOne[Variant.DIVIDER.ordinal()] = 0.02;
        return atOne;
    }
}
