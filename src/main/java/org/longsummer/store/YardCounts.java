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
 * @param notVisited not visited since the moment that was asked about
 * @param overdue next check due before the day that was asked about, or never visited
 * @param outOfService laid up or sold, not in any of the other numbers
 */
public record YardCounts(int units, int act, int drifting, int steady, int neverJudged, int toRetake, int notVisited, int overdue, int outOfService) {}
