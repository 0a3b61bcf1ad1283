package org.longsummer.fleet;

import java.util.List;
import java.util.Optional;
import org.longsummer.chain.departure.Departure;

/** How near the expected split (°F) or amps come to what the sound unit shows, and how honest their uncertainty is. */
final class ExpectationScoring {
    private final List<ScoredVisit> faultFree;
    private final List<ScoredVisit> good;
    private final boolean split;

    ExpectationScoring(List<ScoredVisit> faultFree, List<ScoredVisit> good, boolean split) {
        this.faultFree = faultFree;
        this.good = good;
        this.split = split;
    }

    private Optional<Double> measured(ScoredVisit v) {
        return split ? v.visit().readings().split().map(s -> s.fahrenheit()) : v.visit().readings().amps().map(a -> a.amperes());
    }

    private Optional<Double> expected(ScoredVisit v) {
        Departure departure = v.verdict().departure();
        return split ? departure.expectedSplit().map(e -> e.value().fahrenheit()) : departure.expectedAmps().map(e -> e.value().amperes());
    }

    private double uncertainty(ScoredVisit v) {
        Departure departure = v.verdict().departure();
        return split ? departure.expectedSplit().orElseThrow().standardUncertainty().fahrenheit()
                : departure.expectedAmps().orElseThrow().standardUncertainty().amperes();
    }

    private double sound(ScoredVisit v) {
        return split ? v.truth().soundSplitF() : v.truth().soundAmps();
    }

    /** Root mean square of expected minus what the sound unit shows, settled visits without impact; silence is half of it. */
    double rmsToSoundUnit() {
        return rms(good.stream().filter(v -> v.isOnHighFan() && v.isSettled() && !v.truth().hasImpact()).toList());
    }

    /** The same on visits with impact: an expectation that follows the fault is found out here. */
    double rmsToSoundUnitWithImpact() {
        return rms(good.stream().filter(v -> v.isOnHighFan() && v.isSettled() && v.truth().hasImpact()).toList());
    }

    private double rms(List<ScoredVisit> visits) {
        double sum = 0;
        for (ScoredVisit v : visits) {
            double half = 0.5 * sound(v);
            sum += Scoring.square(expected(v).map(e -> Math.min(Math.abs(e - sound(v)), half)).orElse(half));
        }
        return Math.sqrt(sum / visits.size());
    }

    /** Share of fault-free visits on high fan whose measured value lies within so many standard uncertainties. */
    double cover(double k) {
        List<ScoredVisit> visits = faultFree.stream().filter(v -> v.isOnHighFan() && measured(v).isPresent() && expected(v).isPresent()).toList();
        return Scoring.share(visits, v -> Math.abs(measured(v).get() - expected(v).get()) <= k * uncertainty(v));
    }
}
