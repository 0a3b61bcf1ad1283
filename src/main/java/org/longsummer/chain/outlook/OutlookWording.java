package org.longsummer.chain.outlook;

import java.time.LocalDate;
import java.util.function.Function;
import org.longsummer.quantity.Decimal;

/** Says an outlook in plain words; dates are written as the reader writes them, by a function of the caller's. */
public final class OutlookWording {
    /** A chance below this is said as "less than". */
    private static final double LEAST_SAID = 0.01;

    private OutlookWording() {}

    /** When it falls below what an owner can accept. */
    public static String limit(Outlook outlook, Function<LocalDate, String> date) {
        Outlook.Limit limit = outlook.limit();
        if (outlook.standing().notCooling()) {
            return "It does not cool now.";
        }
        if (!outlook.standing().hasHistory()) {
            return "No visit could be judged yet, so no date can be given.";
        }
        if (limit.alreadyPast() >= 0.9) {
            return "It is past the limit already (" + percent(limit.alreadyPast()) + ").";
        }
        if (limit.alreadyPast() >= 0.5) {
            return "It is more likely past the limit than not by now (" + percent(limit.alreadyPast())
                    + "): what was seen goes on, and what nobody has looked for may have begun.";
        }
        if (limit.p50().isEmpty()) {
            return "It is not expected to fall below the limit by " + date.apply(limit.horizon()) + " (chance "
                    + percent(limit.withinHorizon()) + ").";
        }
        if (!limit.p50().get().isAfter(outlook.standing().on())) {
            return "It may be past the limit already (" + percent(limit.alreadyPast()) + "); no date can be given by these readings.";
        }
        return "If what is wrong now goes on, it falls below the limit by " + date.apply(limit.horizon()) + " with a chance of "
                + percent(limit.ofPresentFault()) + "; then most likely about " + date.apply(limit.p50().get()) + ", eight times in ten between "
                + date.apply(limit.p10().get()) + " and " + date.apply(limit.p90().get()) + ".";
    }

    /** That the work of a day is taken to have done what it can, since nobody has read the unit after it. */
    public static String workTaken(LocalDate day, Function<LocalDate, String> date) {
        return "The work of " + date.apply(day) + " is taken to have helped; no reading since then has shown it.";
    }

    /** How likely it quits, and what that rests on. */
    public static String quitting(Outlook outlook, LifeCurve life, Function<LocalDate, String> date) {
        Outlook.Quitting quitting = outlook.quitting();
        String chance = "Chance that it quits before the season ends on " + date.apply(quitting.seasonEnd()) + ": "
                + percent(quitting.beforeSeasonEnds()) + "; in the next 30 days: " + percent(quitting.in30Days())
                + "; in the season after: " + percent(quitting.inNextSeason()) + ".";
        return switch (quitting.basis()) {
            case NOT_COOLING -> "Its compressor does not run.";
            case AGE_ONLY -> chance + " From its age alone, by the life curve: " + life.origin().phrase() + ".";
            case LIFE_CURVE_ONLY -> chance + " Neither its age nor a judged visit is known: from the life curve alone at "
                    + Decimal.text(life.assumedAge(), 0) + " years, " + life.origin().phrase() + ".";
            case HISTORY -> chance + " From its condition and its age; when a compressor will quit, nobody can date.";
        };
    }

    static String percent(double probability) {
        if (probability < LEAST_SAID) {
            return "less than 1 %";
        }
        return (probability > 1 - LEAST_SAID && probability < 1 ? "more than 99" : Decimal.text(100 * probability, 0)) + " %";
    }
}
