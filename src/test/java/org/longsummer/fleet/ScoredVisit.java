package org.longsummer.fleet;

import java.util.List;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.Visit;

/**
 * One visit with its truth and its verdict.
 *
 * @param visit the visit
 * @param truth what was there
 * @param verdict what was said
 */
record ScoredVisit(Visit visit, Truth truth, Verdict verdict) {
    static final List<Condition> SIX = Condition.six();

    boolean isRetake() {
        return verdict.state() == State.RETAKE;
    }

    boolean isAct() {
        return verdict.state() == State.ACT;
    }

    boolean isDead() {
        return truth.condition().equals(Condition.NOT_COOLING.word());
    }

    /** An honest retake of what practice would not judge either. */
    boolean isExcused() {
        double minutes = visit.readings().runTime().map(time -> time.minutes()).filter(m -> m != 0).orElse(99.0);
        double outdoor = visit.readings().ambientDryBulb().map(t -> t.fahrenheit()).filter(f -> f != 0).orElse(99.0);
        return isRetake() && !truth.isGross() && (minutes < 10 || outdoor < 65);
    }

    /** What the verdicts are ranked by. */
    double suspicion() {
        return 1 - verdict.probabilities().of(Condition.NONE);
    }

    /** The likeliest of the six. */
    Condition likeliestOfSix() {
        Condition best = SIX.get(0);
        for (Condition condition : SIX) {
            best = verdict.probabilities().of(condition) > verdict.probabilities().of(best) ? condition : best;
        }
        return best;
    }

    boolean isOneOfSix() {
        return SIX.stream().anyMatch(condition -> condition.word().equals(truth.condition()));
    }

    boolean isOnHighFan() {
        return visit.fanSpeed() == FanSpeed.HIGH;
    }

    boolean isSettled() {
        return visit.readings().runTime().filter(time -> time.minutes() >= 15).isPresent();
    }
}
