package org.longsummer.chain.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is ahead of a unit, if nothing is done.
 *
 * @param standing what it was made from
 * @param limit when it falls below what its owner can accept
 * @param quitting how likely it quits
 */
public record Outlook(Standing standing, Limit limit, Quitting quitting) {

    /** The day by which it is below the limit, where what is wrong now leads there more likely than not and has not yet. */
    public Optional<LocalDate> likelyLimit() {
        boolean ahead = !standing.notCooling() && limit.alreadyPast() < 0.5 && limit.ofPresentFault() > 0.5;
        return limit.p50().filter(day -> ahead && day.isAfter(standing.on()));
    }

    /**
     * Date at which capacity falls below 0.90 or amps rise above 1.10 of the sound unit's, by the fault that is there now. The
     * percentiles are of the date if it is reached by the horizon; how likely that is stands beside them. Dates are empty where that
     * chance is too small to plan with.
     *
     * @param p10 day before which one in ten of the possible courses that reach it is there
     * @param p50 day by which half of them are
     * @param p90 day by which nine in ten are
     * @param alreadyPast probability that it is there now
     * @param ofPresentFault probability that what is wrong now brings it there by the horizon
     * @param withinHorizon probability that it is there by the horizon, also by what may yet begin
     * @param horizon last day that was looked at
     */
    public record Limit(Optional<LocalDate> p10, Optional<LocalDate> p50, Optional<LocalDate> p90, double alreadyPast,
            double ofPresentFault, double withinHorizon, LocalDate horizon) {}

    /**
     * Probability that the unit quits.
     *
     * @param in30Days within 30 days
     * @param beforeSeasonEnds before the season that is open, or the next one, closes
     * @param inNextSeason in the season after that, given that it lives until then
     * @param seasonEnd the last day of the season meant
     * @param basis what it rests on
     */
    public record Quitting(double in30Days, double beforeSeasonEnds, double inNextSeason, LocalDate seasonEnd, Basis basis) {}

    /** What a chance of quitting rests on. */
    public enum Basis {
        /** No visit could be judged: the life curve and the age alone. */
        AGE_ONLY,
        /** As before, and the age is not known either. */
        LIFE_CURVE_ONLY,
        /** The history's conditions with the age. */
        HISTORY,
        /** The compressor was found not running. */
        NOT_COOLING
    }

    /**
     * One date of the fan: percentiles over all that the history leaves possible.
     *
     * @param on the day
     * @param shareOfLimit 1 at the limit
     * @param splitRatio split against the sound unit's
     * @param ampsRatio amps against the sound unit's
     */
    public record FanPoint(LocalDate on, Percentiles shareOfLimit, Percentiles splitRatio, Percentiles ampsRatio) {}

    /** 10, 50 and 90 %. */
    public record Percentiles(double p10, double p50, double p90) {}

    /** Dates of a fan, from today to the horizon. */
    public record Fan(List<FanPoint> points) {
        public Fan {
            points = List.copyOf(points);
        }
    }
}
