package org.longsummer.chain.condition;

import java.util.Optional;

/**
 * One state of a unit that its history leaves possible, after a visit.
 *
 * @param weight posterior probability; those of one verdict add up to 1
 * @param fault what is wrong; absent for nothing
 * @param severity 0 for nothing; 1 is about what must be repaired
 * @param ratePerSeason growth of severity per season of running; 0 for a fault that came as a step and stays
 */
public record Belief(double weight, Optional<Fault> fault, double severity, double ratePerSeason) {}
