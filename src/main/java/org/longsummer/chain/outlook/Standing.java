package org.longsummer.chain.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is known of a unit on a day.
 *
 * @param on the day
 * @param hypotheses states that the history leaves possible, weights adding up to 1; empty when the unit was never judged
 * @param judgedVisits visits that could be judged so far
 * @param ageYears years since its installation, where known
 * @param notCooling its compressor was found not running
 */
public record Standing(LocalDate on, List<Hypothesis> hypotheses, int judgedVisits, OptionalDouble ageYears, boolean notCooling) {
    public Standing {
        hypotheses = List.copyOf(hypotheses);
        double sum = 0;
        for (Hypothesis hypothesis : hypotheses) {
            sum += hypothesis.weight();
        }
        if (!hypotheses.isEmpty() && !(Math.abs(sum - 1) < 1e-6)) {
            throw new IllegalArgumentException("weights of the hypotheses add up to " + sum + "; they must add up to 1");
        }
    }

    /** Whether there is a history to judge by. */
    public boolean hasHistory() {
        return judgedVisits > 0 && !hypotheses.isEmpty();
    }

    /** The age, or the one assumed where nobody knows it. */
    public double age(LifeCurve life) {
        return ageYears.isPresent() ? Math.max(0, ageYears.getAsDouble()) : life.assumedAge();
    }

    /** Probability of a variant. */
    public double probability(Variant variant) {
        double sum = 0;
        for (Hypothesis hypothesis : hypotheses) {
            sum += hypothesis.variant() == variant ? hypothesis.weight() : 0;
        }
        return sum;
    }
}
