package org.longsummer.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.longsummer.chain.condition.Verdict;

/**
 * What a unit's visits say and what is worth doing about it, worked out and not yet written.
 *
 * @param verdicts in order of time
 */
record JudgedUnit(FleetUnit unit, List<Verdict> verdicts, Advised advised) {

    void write(Handle handle) {
        Verdicts.replace(handle, Map.of(unit.id(), verdicts));
        Standings.judge(handle, this);
    }

    Optional<Verdict> verdictOf(String visitId) {
        return verdicts.stream().filter(verdict -> verdict.visit().id().equals(visitId)).findFirst();
    }
}
