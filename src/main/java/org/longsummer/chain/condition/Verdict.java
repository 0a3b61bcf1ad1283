package org.longsummer.chain.condition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.departure.Departure;
import org.longsummer.chain.screening.Finding;
import org.longsummer.chain.visit.Visit;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * What one visit, with the unit's history before it, says.
 *
 * @param departure measured against expected, with all that it was made from
 * @param state steady, drifting, act or retake
 * @param condition the likeliest condition on {@code drifting} and {@code act}, else {@code NONE}
 * @param probabilities of no condition, of the six and of a fault outside them
 * @param probabilityOfImpact that capacity is below 0.90 or amps above 1.10 of the sound unit now
 * @param evaporatorPart filter or coil, if it is the evaporator's side that is starved
 * @param severity what the fault costs now; absent when there is none to speak of
 * @param since the likeliest day on which it began; absent when there is none to speak of
 * @param evidence what speaks for and against, strongest first
 * @param cannotTell conditions that these readings cannot tell apart, likeliest first; empty when there are none
 * @param nextBestReading absent when nothing would change the decision
 * @param beforeAndAfter set when this visit reads again after work
 * @param findings what was odd about the readings, worst first
 * @param splitEffect what the whole history makes of the unit's split now against sound, ln, over all that is left possible
 * @param ampsEffect the same of its amps
 * @param hypotheses all that the history leaves possible, for looking ahead
 * @param earlierVisits visits of this machine that were judged before this one, retakes left out
 * @param closing the day whose closing of the learned levels was used; absent when nothing had been learned
 */
public record Verdict(Departure departure, State state, Condition condition, Probabilities probabilities, double probabilityOfImpact,
        EvaporatorPart evaporatorPart, Optional<Severity> severity, Optional<LocalDate> since, List<Evidence> evidence, List<Condition> cannotTell,
        Optional<NextBestReading> nextBestReading, Optional<BeforeAfter> beforeAndAfter, List<Finding> findings,
        Uncertain splitEffect, Uncertain ampsEffect, List<Hypothesis> hypotheses, int earlierVisits, Optional<LocalDate> closing) {

    public Visit visit() {
        return departure.screening().visit();
    }

    /** The same verdict with one more remark. */
    public Verdict with(Finding remark) {
        List<Finding> others = new ArrayList<>(findings);
        others.add(remark);
        return new Verdict(departure, state, condition, probabilities, probabilityOfImpact, evaporatorPart, severity, since, evidence,
                cannotTell, nextBestReading, beforeAndAfter, List.copyOf(others), splitEffect, ampsEffect, hypotheses, earlierVisits, closing);
    }
}
