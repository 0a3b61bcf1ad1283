package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.due.NextCheck;

/**
 * How one unit stands: the row of the yard.
 *
 * @param unitId the unit
 * @param label what people call it
 * @param depot where it stands; empty when unknown
 * @param vehicle the vehicle it sits on; empty when unknown
 * @param roofPosition where on the roof; empty when unknown
 * @param duty whether it is looked after now
 * @param judged what the last judged visit said; absent when none was ever judged
 * @param lastVisitId the last visit that counts, judged or not
 * @param lastVisitAt its moment
 * @param lastToRetake the last visit is a retake, so {@code judged} is older than it
 * @param visitCount visits that count
 * @param next the next check; absent when it was never visited
 * @param days what else is due
 * @param advised what was worth doing when that was last worked out; absent when it never was
 */
public record Standing(String unitId, String label, String depot, String vehicle, String roofPosition, FleetUnit.Duty duty,
        Optional<Judged> judged, Optional<String> lastVisitId, Optional<Instant> lastVisitAt, boolean lastToRetake, int visitCount,
        Optional<NextCheck> next, Days days, Optional<Advised> advised) {

    /**
     * Days that say what is due, each where it is known.
     *
     * @param seasonOpens the opening of the season for which its next check is
     * @param filterDue the last day on which its filter is within its interval
     * @param warrantyEnds last day of the warranty
     * @param plannedFor first day for which work is planned that is still to be done
     */
    public record Days(Optional<LocalDate> seasonOpens, Optional<LocalDate> filterDue, Optional<LocalDate> warrantyEnds,
            Optional<LocalDate> plannedFor) {}

    /**
     * What the last judged visit said.
     *
     * @param visitId that visit
     * @param at its moment
     * @param state steady, drifting or act
     * @param condition the likeliest condition on drifting and act, else none
     * @param likeliestFault the likeliest fault whatever the state
     * @param probabilityOfLikeliestFault its probability
     * @param probabilityOfSteady that no condition is present
     * @param probabilityOfImpact that capacity or amps are beyond what an owner can accept
     * @param since likeliest day on which the fault began
     */
    public record Judged(String visitId, Instant at, State state, Condition condition, Condition likeliestFault,
            double probabilityOfLikeliestFault, double probabilityOfSteady, double probabilityOfImpact, Optional<LocalDate> since) {}
}
