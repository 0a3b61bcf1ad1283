package org.longsummer.chain.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.longsummer.chain.condition.Belief;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.Verdict;

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

    /**
     * What is known after a verdict.
     *
     * @param judgedVisits how many of the unit's visits could be judged, this one included
     * @param installedOn day of the machine's installation, where known
     */
    public static Standing after(Verdict verdict, int judgedVisits, Optional<LocalDate> installedOn) {
        LocalDate on = verdict.visit().localDay();
        Hypothesis[] hypotheses = new Hypothesis[verdict.beliefs().size()];
        int count = 0;
        for (Belief belief : verdict.beliefs()) {
            hypotheses[count++] = new Hypothesis(belief.weight(), Variant.of(belief.fault()), belief.severity(), belief.ratePerSeason());
        }
        OptionalDouble age = installedOn.isPresent() ? OptionalDouble.of(ChronoUnit.DAYS.between(installedOn.get(), on) / 365.25)
                : OptionalDouble.empty();
        return new Standing(on, List.of(hypotheses), judgedVisits, age, verdict.condition() == Condition.NOT_COOLING);
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
