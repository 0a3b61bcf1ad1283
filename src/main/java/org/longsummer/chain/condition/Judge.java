package org.longsummer.chain.condition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.departure.Channel;
import org.longsummer.chain.departure.Departure;
import org.longsummer.chain.departure.ExpectedAmps;
import org.longsummer.chain.departure.ExpectedSplit;
import org.longsummer.chain.departure.Observation;
import org.longsummer.chain.learning.Known;
import org.longsummer.chain.screening.Field;
import org.longsummer.chain.screening.Finding;
import org.longsummer.chain.screening.Mistake;
import org.longsummer.chain.screening.Screening;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.science.statistics.Normal;
import org.longsummer.science.uncertainty.Budget;
import org.longsummer.science.uncertainty.Uncertain;

/** Turns the weighed histories of a unit into a verdict. */
final class Judge {
    private static final double ACT_ABOVE = 0.33;
    private static final double DRIFTING_ABOVE = 0.50;
    /** Odds of a fault must have grown this many times by what was read. */
    private static final double LEAST_EVIDENCE = 2;
    private static final double LN_CAPACITY_LIMIT = Math.log(0.90);
    private static final double LN_AMPS_LIMIT = Math.log(1.10);
    private static final double LIMIT_U = 0.012;
    /** What lies beyond this many standard deviations, less than 2e-12, is shown nowhere. */
    private static final double SHOWN = 7;
    /** A runner-up is named from here on. */
    private static final double RUNNER_UP = 0.15;

    private final BayesUpdate update;
    private final Looks looks;
    private final Known known;
    private final int earlierVisits;
    private final Optional<Trail> trail;
    private final boolean explains;
    private final Screening screening;
    private final Visit visit;
    private final Uncertain soundSplit;
    private final Uncertain soundAmps;

    /**
     * @param earlierVisits visits of this machine that were judged before
     * @param trail where the reasons are kept; empty when nobody will ask for them
     * @param explains this verdict gives its reasons, the lines of its budgets and the next best reading
     */
    Judge(BayesUpdate update, Looks looks, Known known, int earlierVisits, Optional<Trail> trail, boolean explains) {
        this.update = update;
        this.looks = looks;
        this.trail = trail;
        this.explains = explains;
        this.known = known;
        this.earlierVisits = earlierVisits;
        this.screening = update.expectation.screening();
        this.visit = screening.visit();
        this.soundSplit = update.soundUnit(Channel.SPLIT);
        this.soundAmps = update.soundUnit(Channel.AMPS);
    }

    Verdict judge(Optional<Comparison> before) {
        Departure departure = departure();
        List<Finding> findings = new ArrayList<>(screening.findings());
        boolean retake = screening.isRetake();
        if (!retake && !screening.compressorOff()) {
            trail.ifPresent(t -> t.note(update, departure));
            retake = !weigh(findings);
            if (retake) {
                trail.ifPresent(t -> t.forget(visit));
            }
        }
        boolean unusable = retake || screening.compressorOff();
        Optional<BeforeAfter> change = unusable ? Optional.empty() : before.flatMap(b -> b.with(update.observation, visit));
        return verdict(departure, findings, retake, change);
    }

    /**
     * Weighs every history and learns. Under each of them the readings may also be a mistake, which says nothing of the unit: that
     * keeps one bad reading from condemning it. False, and nothing weighed, when a mistake explains the readings better than all
     * histories do.
     */
    private boolean weigh(List<Finding> findings) {
        double bad = update.mistakes * new Mistakes(update.observation, visit).density();
        for (Trajectory t : update.lattice.trajectories()) {
            double good = (1 - update.mistakes) * update.departures(t);
            t.honest = good / (good + bad);
            t.news = (good + bad) * update.side(t);
        }
        if (update.lattice.honesty() < 0.5) {
            findings.add(new Finding(Mistake.FITS_NOTHING, Field.WHOLE_VISIT, Optional.empty(), true));
            return false;
        }
        update.lattice.takeNews();
        update.learn();
        update.lattice.takeAtTheirWord();
        return true;
    }

    private Departure departure() {
        Observation o = update.observation;
        double lnSplit = o.lnExpected()[0] + soundSplit.value();
        double lnAmps = o.lnExpected()[1] + soundAmps.value();
        double split = Math.exp(lnSplit);
        double amps = Math.exp(lnAmps);
        boolean judgesAmps = !screening.unit().plate().variableSpeed();
        ExpectedSplit expectedSplit = new ExpectedSplit(new TemperatureDifference(split),
                new TemperatureDifference(split * soundSplit.standardUncertainty()),
                budget(Channel.SPLIT, soundSplit));
        ExpectedAmps expectedAmps = new ExpectedAmps(new Current(amps), new Current(amps * soundAmps.standardUncertainty()),
                budget(Channel.AMPS, soundAmps));
        return new Departure(screening, Optional.of(expectedSplit), judgesAmps ? Optional.of(expectedAmps) : Optional.empty(),
                o.present()[0] ? Optional.of(new Uncertain(o.values()[0] - soundSplit.value(), soundSplit.standardUncertainty()))
                        : Optional.empty(),
                o.present()[1] ? Optional.of(new Uncertain(o.values()[1] - soundAmps.value(), soundAmps.standardUncertainty()))
                        : Optional.empty());
    }

    private Budget budget(Channel channel, Uncertain sound) {
        return explains ? update.budget(channel, sound) : Budget.NOT_KEPT;
    }

    private Verdict verdict(Departure departure, List<Finding> findings, boolean retake, Optional<BeforeAfter> change) {
        double[] weights = new double[Condition.OTHER.ordinal() + 1];
        double impact = 0;
        double noticeable = 0;
        for (Trajectory t : update.lattice.trajectories()) {
            weights[t.condition().ordinal()] += t.weight;
            impact += t.weight * impact(t);
            noticeable += update.isNoticeable(t) ? t.weight : 0;
        }
        Probabilities probabilities = Probabilities.of(weights);
        State state = state(probabilities.of(Condition.NONE), noticeable, impact, retake);
        Condition condition = screening.compressorOff() ? Condition.NOT_COOLING
                : state == State.ACT || state == State.DRIFTING ? probabilities.likeliestFault() : Condition.NONE;
        boolean asks = explains && !screening.compressorOff();
        return new Verdict(departure, state, condition, probabilities, screening.compressorOff() ? 1 : impact, evaporatorPart(),
                severity(probabilities), since(probabilities),
                asks ? trail.orElseThrow().about(probabilities.likeliestFault(), state != State.STEADY) : List.of(), cannotTell(probabilities),
                asks && state != State.RETAKE ? new NextReading(update, looks).best() : Optional.empty(), change, findings,
                update.faultEffect(Channel.SPLIT), update.faultEffect(Channel.AMPS), update.lattice.hypotheses(), earlierVisits,
                known.closing());
    }

    /**
     * Time alone makes a fault likelier and is no reason to call one: readings must have raised its odds. Nor is one that costs next to
     * nothing yet, such as the new dirt on a coil just cleaned.
     */
    private State state(double sound, double noticeable, double impact, boolean retake) {
        if (screening.compressorOff()) {
            return State.ACT;
        }
        if (retake) {
            return State.RETAKE;
        }
        if (update.lattice.evidenceOfFault(sound) < LEAST_EVIDENCE) {
            return State.STEADY;
        }
        return impact > ACT_ABOVE ? State.ACT : noticeable > DRIFTING_ABOVE ? State.DRIFTING : State.STEADY;
    }

    private EvaporatorPart evaporatorPart() {
        double filter = 0;
        double coil = 0;
        for (Trajectory t : update.lattice.trajectories()) {
            filter += !t.isSound() && t.fault == Fault.FILTER ? t.weight : 0;
            coil += !t.isSound() && t.fault == Fault.EVAPORATOR_COIL ? t.weight : 0;
        }
        return EvaporatorPart.of(filter, coil);
    }

    /** The likeliest fault and every other that is at least a third as likely and worth a word. */
    private static List<Condition> cannotTell(Probabilities probabilities) {
        Condition likeliest = probabilities.likeliestFault();
        List<Condition> alike = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            double p = probabilities.of(condition);
            if (condition != Condition.NONE && p > RUNNER_UP && p > probabilities.of(likeliest) / 3) {
                alike.add(condition);
            }
        }
        alike.sort((a, b) -> Double.compare(probabilities.of(b), probabilities.of(a)));
        return alike.size() > 1 ? List.copyOf(alike) : List.of();
    }

    private double impact(Trajectory t) {
        double lnCapacity = update.lnCapacity(t);
        double lnAmps = update.load[1] + update.effect(t, Channel.AMPS.ordinal());
        double weak = share((LN_CAPACITY_LIMIT - lnCapacity) / (LIMIT_U + 0.15 * Math.abs(lnCapacity)));
        double hungry = share((lnAmps - LN_AMPS_LIMIT) / (LIMIT_U + 0.15 * Math.abs(lnAmps)));
        return 1 - (1 - weak) * (1 - hungry);
    }

    /** Of a standard normal variable below x; beyond what is ever shown, it is not worked out. */
    private static double share(double x) {
        return x < -SHOWN ? 0 : x > SHOWN ? 1 : Normal.cumulative(x);
    }

    private Optional<Severity> severity(Probabilities probabilities) {
        Condition likeliest = probabilities.likeliestFault();
        if (probabilities.of(likeliest) < 0.05) {
            return Optional.empty();
        }
        double weight = 0;
        double capacity = 0;
        double capacity2 = 0;
        double amps = 0;
        double amps2 = 0;
        for (Trajectory t : update.lattice.trajectories()) {
            if (t.condition() == likeliest) {
                double lost = 1 - Math.exp(update.lnCapacity(t));
                double gained = Math.exp(update.effect(t, Channel.AMPS.ordinal())) - 1;
                weight += t.weight;
                capacity += t.weight * lost;
                capacity2 += t.weight * lost * lost;
                amps += t.weight * gained;
                amps2 += t.weight * gained * gained;
            }
        }
        double lost = capacity / weight;
        double gained = amps / weight;
        return Optional.of(new Severity(lost, Math.sqrt(Math.max(0, capacity2 / weight - lost * lost)), gained,
                Math.sqrt(Math.max(0, amps2 / weight - gained * gained))));
    }

    /** Weighted median of the day on which the likeliest fault began. */
    private Optional<LocalDate> since(Probabilities probabilities) {
        Condition likeliest = probabilities.likeliestFault();
        if (probabilities.of(Condition.NONE) > 0.7) {
            return Optional.empty();
        }
        List<Trajectory> some = new ArrayList<>();
        double weight = 0;
        for (Trajectory t : update.lattice.trajectories()) {
            if (t.condition() == likeliest) {
                some.add(t);
                weight += t.weight;
            }
        }
        some.sort((a, b) -> Long.compare(a.onset, b.onset));
        double sum = 0;
        for (Trajectory t : some) {
            sum += t.weight;
            if (sum >= weight / 2) {
                return Optional.of(LocalDate.ofEpochDay(t.onset));
            }
        }
        return Optional.empty();
    }
}
