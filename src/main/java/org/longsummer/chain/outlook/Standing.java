package org.longsummer.chain.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Growth;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Work;

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
     * What is known after a verdict, before the work of its visit.
     *
     * @param judgedVisits how many of the unit's visits could be judged, this one included
     * @param installedOn day of the machine's installation, where known
     */
    public static Standing after(Verdict verdict, int judgedVisits, Optional<LocalDate> installedOn) {
        return of(verdict, verdict.hypotheses(), judgedVisits, installedOn);
    }

    /**
     * The same once the visit's own work is done. Nobody has read the unit since, so the work is taken to have done what it can, as the
     * history takes it; a compressor that stood still counts as standing until it was seen to run.
     */
    public static Standing afterItsWork(Verdict verdict, int judgedVisits, Optional<LocalDate> installedOn) {
        Set<Work> done = verdict.visit().workDone();
        if (done.contains(Work.UNIT_REPLACED)) {
            return new Standing(verdict.visit().localDay(), List.of(), 0, OptionalDouble.of(0), false);
        }
        return of(verdict, verdict.hypotheses().stream().map(hypothesis -> hypothesis.after(done)).toList(), judgedVisits, installedOn);
    }

    private static Standing of(Verdict verdict, List<Hypothesis> hypotheses, int judgedVisits, Optional<LocalDate> installedOn) {
        LocalDate on = verdict.visit().localDay();
        OptionalDouble age = installedOn.isPresent() ? OptionalDouble.of(ChronoUnit.DAYS.between(installedOn.get(), on) / 365.25)
                : OptionalDouble.empty();
        return new Standing(on, hypotheses, judgedVisits, age, verdict.condition() == Condition.NOT_COOLING);
    }

    /**
     * What is known on a later day when nobody was there meanwhile: what was wrong has gone on growing, and what was sound may have begun
     * to fail, at the model's hazards; such a fault is taken to have begun in the middle of the time that has passed.
     *
     * @return this, when the day is not later
     */
    public Standing later(LocalDate day, SeasonClock clock, FaultModel model) {
        if (!day.isAfter(on)) {
            return this;
        }
        double seasons = clock.seasonsBetween(on, day);
        List<Hypothesis> grown = new ArrayList<>(hypotheses.size());
        for (Hypothesis hypothesis : hypotheses) {
            if (hypothesis.isSound() && seasons > 0) {
                addNew(grown, hypothesis.weight(), seasons, model);
            } else {
                grown.add(new Hypothesis(hypothesis.weight(), hypothesis.fault(),
                        hypothesis.severity() + hypothesis.ratePerSeason() * seasons, hypothesis.ratePerSeason()));
            }
        }
        OptionalDouble age = ageYears.isPresent()
                ? OptionalDouble.of(ageYears.getAsDouble() + ChronoUnit.DAYS.between(on, day) / 365.25) : ageYears;
        return new Standing(day, grown, judgedVisits, age, notCooling);
    }

    private static void addNew(List<Hypothesis> grown, double weight, double seasons, FaultModel model) {
        double total = model.onsets();
        double begun = 1 - Math.exp(-total * seasons);
        grown.add(Hypothesis.sound(weight * (1 - begun)));
        for (Fault fault : Fault.values()) {
            double share = total > 0 ? weight * begun * model.onsetsPerSeason().get(fault.ordinal()) / total : 0;
            for (Growth way : model.growth()) {
                if (share > 0) {
                    grown.add(new Hypothesis(share * way.share(), fault, way.step() + way.ratePerSeason() * seasons / 2, way.ratePerSeason()));
                }
            }
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

    /** Probability that nothing is wrong. */
    public double sound() {
        double sum = 0;
        for (Hypothesis hypothesis : hypotheses) {
            sum += hypothesis.isSound() ? hypothesis.weight() : 0;
        }
        return sum;
    }
}
