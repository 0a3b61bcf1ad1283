package org.longsummer.chain.condition;

import java.util.Optional;
import java.util.Set;
import org.longsummer.chain.visit.Work;

/**
 * One weighted state of a unit that its history leaves possible, after a visit.
 *
 * @param weight posterior probability, 0 or more; those of one verdict add up to 1
 * @param fault what is wrong; absent for nothing
 * @param severity 0 for nothing; 1 is about what must be repaired
 * @param ratePerSeason growth of severity per season of running; 0 for a fault that came as a step and stays
 */
public record Hypothesis(double weight, Optional<Fault> fault, double severity, double ratePerSeason) {
    public Hypothesis {
        if (!(weight >= 0 && severity >= 0 && severity < 1e3 && ratePerSeason >= 0 && ratePerSeason < 1e3)) {
            throw new IllegalArgumentException("hypothesis of " + fault + ": weight " + weight + ", severity " + severity + ", rate "
                    + ratePerSeason + " given; all must be 0 or more and finite");
        }
    }

    public Hypothesis(double weight, Fault fault, double severity, double ratePerSeason) {
        this(weight, fault.supposed(), severity, ratePerSeason);
    }

    /** Nothing wrong. */
    public static Hypothesis sound(double weight) {
        return new Hypothesis(weight, Optional.empty(), 0, 0);
    }

    /** The same with another weight. */
    public Hypothesis weighing(double other) {
        return new Hypothesis(other, fault, severity, ratePerSeason);
    }

    /** The same once work was done, by what the history itself makes of work: dirt gathers again, anything else that was mended is gone. */
    public Hypothesis after(Set<Work> done) {
        if (fault.isEmpty() || !done.contains(fault.get().cure())) {
            return this;
        }
        return fault.get().comesBack(ratePerSeason) ? new Hypothesis(weight, fault, 0, ratePerSeason) : sound(weight);
    }

    public boolean isSound() {
        return fault.isEmpty();
    }

    public boolean isOf(Fault other) {
        return fault.isPresent() && fault.get() == other;
    }

    /** Whether it sits in the sealed circuit, which nobody opens on a roof. */
    public boolean isSealed() {
        return fault.isPresent() && fault.get().isSealed();
    }
}
