package org.longsummer.chain;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Work;

/**
 * The machine that stands in a unit's place: another one once it was replaced.
 *
 * @param installedOn day of its installation, where known
 * @param judgedVisits its visits that could be judged so far
 */
record Machine(Optional<LocalDate> installedOn, int judgedVisits) {
    static Machine of(Unit unit) {
        return new Machine(unit.installedOn(), 0);
    }

    /** As it stands at a visit. */
    Machine at(Verdict verdict) {
        return verdict.state() == State.RETAKE ? this : new Machine(installedOn, judgedVisits + 1);
    }

    /** What the visit leaves behind. */
    Machine after(Verdict verdict) {
        return verdict.visit().workDone().contains(Work.UNIT_REPLACED) ? new Machine(Optional.of(verdict.visit().localDay()), 0) : this;
    }
}
