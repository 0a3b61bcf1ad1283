package org.longsummer.store;

/**
 * How many units in service stand how, under a filter.
 *
 * @param units all of them
 * @param act last judged act
 * @param drifting last judged drifting
 * @param steady last judged steady
 * @param neverJudged never judged
 * @param toRetake last reading to be retaken, whatever the standing state
 * @param notChecked not checked for the season of their depot, or not visited since the moment that was asked about
 * @param overdue next check due before the day that was asked about, or never visited
 * @param filterOverdue filter past its interval
 * @param warrantyEnding warranty about to end
 * @param workPlanned work is planned and still to be done
 * @param outOfService laid up, not in any of the numbers before
 * @param sold sold, not in any of them either
 */
public record YardCounts(int units, int act, int drifting, int steady, int neverJudged, int toRetake, int notChecked, int overdue,
        int filterOverdue, int warrantyEnding, int workPlanned, int outOfService, int sold) {}
