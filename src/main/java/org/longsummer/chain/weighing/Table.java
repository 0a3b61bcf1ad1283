package org.longsummer.chain.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;

/** The four options over all possible states of one unit. */
final class Table {
    /** Chance that a capacitor or another electrical part brings a dead compressor back, by what it was suspected of. Ours. */
    private static final double PART_WILL_DO = 0.3;
    private static final double PART_WILL_DO_SEALED = 0.05;
    private static final double PART_WILL_DO_CAPACITOR = 0.8;
    /** A chance to cure below which an option is no alternative worth naming. */
    private static final double SOME_CHANCE = 0.1;

    final States states;
    final Ledger ledger;
    final List<Bundle> bundles;

    private Table(States states, Ledger ledger, List<Bundle> bundles) {
        this.states = states;
        this.ledger = ledger;
        this.bundles = bundles;
    }

    static Table of(Ledger ledger, Standing standing) {
        States states = States.running(ledger, standing.hypotheses());
        return new Table(states, ledger, Bundle.best(states, ledger, states.weights, ledger.callOut()));
    }

    /** A unit found with its compressor not running. */
    static Table ofDead(Ledger ledger, Standing standing, int seasonEnd) {
        double partWillDo = standing.hypotheses().isEmpty() ? PART_WILL_DO : 0;
        for (Hypothesis hypothesis : standing.hypotheses()) {
            partWillDo += hypothesis.weight() * partWillDo(hypothesis);
        }
        States states = States.dead(ledger, partWillDo, seasonEnd);
        return new Table(states, ledger, Bundle.ofDead(states, ledger));
    }

    private static double partWillDo(Hypothesis state) {
        return state.isSealed() ? PART_WILL_DO_SEALED : state.isOf(Fault.CAPACITOR) ? PART_WILL_DO_CAPACITOR : PART_WILL_DO;
    }

    /** The options, cheapest first; of equal ones the smaller intervention first. */
    List<Bundle> byCost() {
        List<Bundle> sorted = new ArrayList<>(bundles);
        sorted.sort((a, b) -> Double.compare(a.expected(), b.expected()));
        return sorted;
    }

    /** The cheapest other option that has some chance to change anything; the cheapest other one where none has. */
    Bundle runnerUp(Bundle chosen) {
        List<Bundle> others = byCost();
        others.remove(chosen);
        for (Bundle other : others) {
            if (other.option() == Option.KEEP || other.option() == Option.REPLACE || cures(other) >= SOME_CHANCE) {
                return other;
            }
        }
        return others.get(0);
    }

    private double cures(Bundle bundle) {
        double sum = 0;
        for (int i = 0; i < states.count(); i++) {
            sum += states.weights[i] * bundle.cures(states.states.get(i));
        }
        return sum;
    }

    /** The options if somebody were on site anyway. */
    Table withSomebodyOnSite() {
        return new Table(states, ledger, Bundle.best(states, ledger, states.weights, 0));
    }

    /** Probability of the states in which an option is the cheapest of the four; of keeping, that no other saves what matters. */
    double bestProbability(Bundle chosen) {
        double sum = 0;
        for (int i = 0; i < states.count(); i++) {
            double own = chosen.in(states, i);
            boolean best = true;
            for (Bundle other : bundles) {
                double margin = chosen.option() == Option.KEEP ? ledger.material(other) : 0;
                best &= other == chosen || own <= other.in(states, i) + margin;
            }
            sum += best ? states.weights[i] : 0;
        }
        return sum;
    }

    /** What the best option costs on average if the state is known first, against the best option without knowing. */
    double worthOfKnowing() {
        double known = 0;
        for (int i = 0; i < states.count(); i++) {
            double[] certain = new double[states.count()];
            certain[i] = 1;
            known += states.weights[i] * cheapest(certain);
        }
        return Math.max(0, cheapest(states.weights) - known);
    }

    /** Expected cost of the best option for given weights of the states, which need not add up to one. */
    double cheapest(double[] weights) {
        double least = Double.POSITIVE_INFINITY;
        for (Bundle bundle : Bundle.best(states, ledger, weights, ledger.callOut())) {
            least = Math.min(least, bundle.expected());
        }
        return least;
    }

    /** What it costs to do in thirty days what could be done now. */
    double costOfWaiting(Bundle chosen) {
        double later = ledger.calendar.perStep;
        double sum = 0;
        for (int i = 0; i < states.count(); i++) {
            double now = chosen.in(states, i);
            double ahead = chosen.option() == Option.REPLACE ? ledger.replacementNow(states.states.get(i)) + states.renewed.mean[1]
                    : chosen.price() + chosen.cures(states.states.get(i)) * states.cured[i].mean[1]
                            + (1 - chosen.cures(states.states.get(i))) * states.uncured(i, chosen.option()).mean[1];
            sum += states.weights[i] * (states.kept[i].mean[0] + later * states.kept[i].staysFirst * (ahead - states.kept[i].mean[1]) - now);
        }
        return sum;
    }

    OptionCost cost(Bundle bundle, int seasonEnd, String currency) {
        double[] parts = new double[Course.PARTS];
        double now = 0;
        double square = 0;
        double cures = 0;
        double quits = 0;
        for (int i = 0; i < states.count(); i++) {
            boolean isNew = bundle.option() == Option.REPLACE;
            Course uncured = states.uncured(i, bundle.option());
            Course cured = isNew ? states.renewed : states.cured[i];
            double chance = isNew ? 1 : bundle.cures(states.states.get(i));
            double price = isNew ? ledger.replacementNow(states.states.get(i)) : bundle.price();
            double weight = states.weights[i];
            now += weight * price;
            cures += weight * chance;
            addParts(parts, cured, weight * chance);
            addParts(parts, uncured, weight * (1 - chance));
            square += weight * (chance * squared(cured, price) + (1 - chance) * squared(uncured, price));
            quits += weight * (chance * quit(cured, seasonEnd) + (1 - chance) * quit(uncured, seasonEnd));
        }
        double mean = now;
        for (double part : parts) {
            mean += part;
        }
        double spread = Math.sqrt(Math.max(0, square - mean * mean));
        parts[Course.AFTERWARDS] += ledger.worthToday();
        return rounded(bundle, now, parts, spread, cures, quits, currency);
    }

    /** What some works save against leaving it alone, state by state; at a price of their own, or at the list's. */
    PlannedSaving planned(List<Work> works, Optional<Money> agreed, String currency) {
        Bundle bundle = Bundle.of(works, ledger);
        double price = 0;
        double mean = 0;
        double square = 0;
        for (int i = 0; i < states.count(); i++) {
            double listed = bundle.option() == Option.REPLACE ? ledger.replacementNow(states.states.get(i)) : bundle.price();
            double paid = agreed.isPresent() ? agreed.get().amount() : listed;
            double saving = states.keeping(i) - bundle.in(states, i) + listed - paid;
            price += states.weights[i] * paid;
            mean += states.weights[i] * saving;
            square += states.weights[i] * saving * saving;
        }
        return new PlannedSaving(Money.of(price, currency), Money.of(mean, currency),
                Money.of(Math.sqrt(Math.max(0, square - mean * mean)), currency));
    }

    private static OptionCost rounded(Bundle bundle, double now, double[] parts, double spread, double cures, double quits,
            String currency) {
        Money[] amounts = new Money[Course.PARTS];
        Money sum = Money.of(now, currency);
        for (int part = 0; part < Course.PARTS; part++) {
            amounts[part] = Money.of(parts[part], currency);
            sum = sum.plus(amounts[part]);
        }
        return new OptionCost(bundle.option(), bundle.works(), Money.of(now, currency), amounts[Course.ENERGY], amounts[Course.BREAKDOWN],
                amounts[Course.LATER_WORK], amounts[Course.AFTERWARDS], sum, Money.of(spread, currency), cures, quits);
    }

    private static void addParts(double[] parts, Course course, double weight) {
        for (int part = 0; part < Course.PARTS; part++) {
            parts[part] += weight * course.parts[part];
        }
    }

    private static double squared(Course course, double price) {
        return price * price + 2 * price * course.mean[0] + course.square[0];
    }

    private static double quit(Course course, int step) {
        return course.quit[Math.min(step, course.quit.length - 1)];
    }
}
