package org.longsummer.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.Probabilities;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.departure.Departure;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.screening.Screener;
import org.longsummer.chain.screening.Screening;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/** The whole chain, from visits to verdicts. */
public final class Assessment {
    private Assessment() {}

    /**
     * Judges all the visits of one unit, each from the ones before it and from the last closing before its own day.
     *
     * @param visits of this unit, in any order; withdrawn and corrected ones left out
     * @return one verdict a visit, in order of time
     */
    public static List<Verdict> ofUnit(Unit unit, List<Visit> visits, Closings closings) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Visit visit : visits) {
            Screening screening = Screener.screen(unit, visit);
            double[] weights = new double[9];
            weights[0] = 1;
            verdicts.add(new Verdict(new Departure(screening, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                    screening.isRetake() ? State.RETAKE : State.STEADY, Condition.NONE, Probabilities.of(weights), 0,
                    Optional.empty(), Optional.empty(), List.of(), List.of(), Optional.empty(), Optional.empty(), screening.findings(),
                    closings.lastBefore(visit.utcDay())));
        }
        return verdicts;
    }
}
