package org.longsummer.chain.weighing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Hypothesis;

/** The states that a unit's history leaves possible, near ones merged, each with its course if left alone and if cured. */
final class States {
    /** States lighter than this cannot move an amount that matters. */
    private static final double NEGLIGIBLE = 1e-4;
    private static final double SEVERITY_BIN = 0.1;

    final List<Hypothesis> states;
    final double[] weights;
    /** Left alone. */
    final Course[] kept;
    /** After a work that cured it. */
    final Course[] cured;
    /** After a repair that did not: as if left alone, but a unit that does not run at all is then replaced. */
    final Course[] uncured;
    final Course sound;
    final Course renewed;
    private final Ledger ledger;

    private States(Ledger ledger, List<Hypothesis> states) {
        this.ledger = ledger;
        this.states = states;
        sound = Course.sound(ledger, ledger.age);
        renewed = Course.sound(ledger, 0);
        weights = new double[states.size()];
        kept = new Course[weights.length];
        cured = new Course[weights.length];
        uncured = new Course[weights.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = states.get(i).weight();
        }
    }

    /** A unit that runs. */
    static States running(Ledger ledger, List<Hypothesis> hypotheses) {
        States states = new States(ledger, merged(hypotheses));
        states.run();
        return states;
    }

    /** A unit whose compressor does not run: either an electrical part will do, or it is gone. */
    static States dead(Ledger ledger, double partWillDo, int seasonEnd) {
        States states = new States(ledger, List.of(new Hypothesis(partWillDo, Fault.CAPACITOR, 1, 0),
                new Hypothesis(1 - partWillDo, Fault.COMPRESSOR, 1, 0)));
        double[] idle = ledger.idle(seasonEnd);
        for (int i = 0; i < states.count(); i++) {
            double[] bought = new double[idle.length];
            Arrays.fill(bought, ledger.replacementNow(states.states.get(i)));
            states.kept[i] = Course.after(ledger, idle, states.renewed);
            states.cured[i] = states.sound;
            states.uncured[i] = Course.after(ledger, bought, states.renewed);
        }
        return states;
    }

    private void run() {
        for (int i = 0; i < weights.length; i++) {
            Hypothesis state = states.get(i);
            kept[i] = state.isSound() ? sound
                    : Course.faulty(ledger, state.fault().get(), state.severity(), state.ratePerSeason(), sound);
            cured[i] = regrows(state) ? regrown(i) : sound;
            uncured[i] = kept[i];
        }
    }

    int count() {
        return weights.length;
    }

    /** Cost of leaving it alone in one state. */
    double keeping(int i) {
        return kept[i].mean[0];
    }

    /** The course of one state after works that did not cure it. */
    Course uncured(int i, Option option) {
        return option == Option.REPAIR ? uncured[i] : kept[i];
    }

    /** Cost of a new unit in one state. */
    double replacing(int i) {
        return ledger.replacementNow(states.get(i)) + renewed.mean[0];
    }

    /** What a remedy is worth in one state, its price left out. */
    double gain(int i, Remedy remedy) {
        return remedy.cures(states.get(i)) * (kept[i].mean[0] - cured[i].mean[0]);
    }

    /** The course of clean dirt growing again, shared by the states that differ only in how far it had come. */
    private Course regrown(int i) {
        Fault dirt = states.get(i).fault().get();
        for (int j = 0; j < i; j++) {
            if (states.get(j).isOf(dirt) && states.get(j).ratePerSeason() == states.get(i).ratePerSeason()) {
                return cured[j];
            }
        }
        return Course.faulty(ledger, dirt, 0, states.get(i).ratePerSeason(), sound);
    }

    /** Dirt comes back at its own rate. */
    private static boolean regrows(Hypothesis state) {
        return state.fault().isPresent() && state.fault().get().comesBack(state.ratePerSeason());
    }

    private static List<Hypothesis> merged(List<Hypothesis> hypotheses) {
        List<Hypothesis> merged = new ArrayList<>();
        double kept = 0;
        for (Hypothesis hypothesis : hypotheses) {
            if (hypothesis.weight() >= NEGLIGIBLE) {
                kept += hypothesis.weight();
                int like = indexOfLike(merged, hypothesis);
                if (like < 0) {
                    merged.add(hypothesis);
                } else {
                    merged.set(like, joined(merged.get(like), hypothesis));
                }
            }
        }
        if (merged.isEmpty()) {
            return List.of(Hypothesis.sound(1));
        }
        double scale = 1 / kept;
        return merged.stream().map(h -> h.weighing(h.weight() * scale)).toList();
    }

    private static int indexOfLike(List<Hypothesis> merged, Hypothesis other) {
        for (int i = 0; i < merged.size(); i++) {
            Hypothesis one = merged.get(i);
            if (one.fault().equals(other.fault()) && (one.isSound() || one.ratePerSeason() == other.ratePerSeason()
                    && Math.abs(one.severity() - other.severity()) < SEVERITY_BIN)) {
                return i;
            }
        }
        return -1;
    }

    private static Hypothesis joined(Hypothesis one, Hypothesis other) {
        double weight = one.weight() + other.weight();
        double severity = one.isSound() ? 0
                : (one.weight() * one.severity() + other.weight() * other.severity()) / weight;
        return new Hypothesis(weight, one.fault(), severity, one.ratePerSeason());
    }
}
