package org.longsummer.chain.outlook;

import org.longsummer.chain.condition.Fault;

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
    public static double ofFault(Fault fault, double severity) {
        return AT_SEVERITY_ONE[fault.ordinal()] * severity * severity;
    }

    /** Cumulative hazard of a growing fault over a span of running. */
    public static double ofFault(Fault fault, double severity, double ratePerSeason, double seasons) {
        double growing = ratePerSeason <= 0 || severity >= MOST_SEVERE ? 0 : Math.min(seasons, (MOST_SEVERE - severity) / ratePerSeason);
        double end = severity + ratePerSeason * growing;
        double squares = growing * (severity * severity + severity * end + end * end) / 3 + (seasons - growing) * end * end;
        return AT_SEVERITY_ONE[fault.ordinal()] * squares;
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
        double[] atOne = new double[Fault.COUNT];
        for (Fault fault : Fault.values()) {
            atOne[fault.ordinal()] = switch (fault) {
                case COMPRESSOR -> 0.6;
                case CAPACITOR -> 0.5;
                case REFRIGERANT -> 0.4;
                case FAN_DRAG -> 0.25;
                case EVAPORATOR_COIL, FILTER -> 0.12;
                case CONDENSER_COIL -> 0.08;
                case DIVIDER -> 0.02;
            };
        }
        return atOne;
    }
}
