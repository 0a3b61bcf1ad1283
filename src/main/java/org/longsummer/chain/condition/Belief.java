package org.longsummer.chain.condition;

import java.util.Optional;
import java.util.Set;
import org.longsummer.chain.visit.Work;

/**
 * One state of a unit that its history leaves possible, after a visit.
 *
 * @param weight posterior probability; those of one verdict add up to 1
 * @param fault what is wrong; absent for nothing
 * @param severity 0 for nothing; 1 is about what must be repaired
 * @param ratePerSeason growth of severity per season of running; 0 for a fault that came as a step and stays
 */
public record Belief(double weight, Optional<Fault> fault, double severity, double ratePerSeason) {

    /** The same once work was done, by what the history itself makes of work: dirt gathers again, anything else that was mended is gone. */
    public Belief after(Set<Work> done) {
        if (fault.isEmpty() || !Lattice.cures(done, fault.get())) {
            return this;
        }
        return Lattice.comesBack(fault.get(), ratePerSeason) ? new Belief(weight, fault, 0, ratePerSeason) : new Belief(weight, Optional.empty(), 0, 0);
    }
}
