package org.longsummer.chain.outlook;

/**
 * How likely a unit quits: from its age by the life curve, and from its fault by severity.
 *
 * <p>The fault's part is a hazard per season of running of c s^2 at severity s, added to the age's. The coefficients are ours (there is
 * no published one for roof units): a worn compressor, a low charge or a weak capacitor at the severity that must be repaired has about
 * an even chance of quitting within the season; a dirty evaporator or filter ices and a dirty condenser trips one time in ten; a leaking
 * divider hardly does anything.
 *
 * <p>Of what ends lives by the curve, only a share comes without a fault that readings would show first: that is all that age adds to a
 * unit whose history is known. What may yet begin is added by {@link NewFaults}.
 */
public final class QuittingHazard {
    /** Share of ends that come without a sign. Ours. */
    public static final double WITHOUT_SIGN = 0.15;
    /** Severity beyond which nothing grows worse, as in the history's lattice. */
    private static final double MOST_SEVERE = 1.6;
    private static final double[] AT_SEVERITY_ONE = coefficients();

    private QuittingHazard() {}

    /** Hazard per season of running of a fault of a severity, beyond the age's. */
    public static double ofFault(Variant variant, double severity) {
        return AT_SEVERITY_ONE[variant.ordinal()] * severity * severity;
    }

    /** Cumulative hazard of a growing fault over a span of running. */
    public static double ofFault(Variant variant, double severity, double ratePerSeason, double seasons) {
        double growing = ratePerSeason <= 0 || severity >= MOST_SEVERE ? 0 : Math.min(seasons, (MOST_SEVERE - severity) / ratePerSeason);
        double end = severity + ratePerSeason * growing;
        double squares = growing * (severity * severity + severity * end + end * end) / 3 + (seasons - growing) * end * end;
        return AT_SEVERITY_ONE[variant.ordinal()] * squares;
    }

    /** Cumulative hazard of ageing over a span of running, of a unit that nobody judged. */
    public static double ofAge(LifeCurve life, double ageYears, double seasons) {
        return life.cumulativeHazard(ageYears + seasons) - life.cumulativeHazard(ageYears);
    }

    /** The same of a unit whose history is known: only what comes without a sign. */
    public static double withoutSign(LifeCurve life, double ageYears, double seasons) {
        return WITHOUT_SIGN * ofAge(life, ageYears, seasons);
    }

    /** Probability from a cumulative hazard. */
    public static double share(double cumulative) {
        return cumulative < 1e-5 ? cumulative : 1 - Math.exp(-cumulative);
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
