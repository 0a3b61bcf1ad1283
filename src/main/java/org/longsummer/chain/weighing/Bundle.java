package org.longsummer.chain.weighing;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.visit.Work;

/**
 * What one call does.
 *
 * @param option which of the four it is
 * @param remedies the works of cleaning or repairing; empty for keeping and replacing
 * @param price of the works with their call-out; 0 for keeping and replacing
 * @param expected cost to the horizon over all states
 */
record Bundle(Option option, List<Remedy> remedies, double price, double expected) {

    /** What somebody plans to do in one call: a new unit is a new unit, whatever else is done to the old one; its expected cost is left at 0. */
    static Bundle of(List<Work> works, Ledger ledger) {
        if (works.contains(Work.UNIT_REPLACED)) {
            return new Bundle(Option.REPLACE, List.of(), 0, 0);
        }
        List<Remedy> remedies = Remedy.ALL.stream().filter(remedy -> works.contains(remedy.work())).toList();
        double price = 0;
        boolean call = false;
        for (Remedy remedy : remedies) {
            price += Works.price(remedy, ledger, ledger.callOut());
            call |= remedy.needsCall();
        }
        boolean cleaning = remedies.stream().allMatch(Remedy::isCleaning);
        return new Bundle(cleaning ? Option.CLEAN : Option.REPAIR, remedies, price + (call ? ledger.callOut() : 0), 0);
    }

    /** Chance that it cures what is wrong in a state. */
    double cures(Hypothesis state) {
        double left = 1;
        for (Remedy remedy : remedies) {
            left *= 1 - remedy.cures(state);
        }
        return 1 - left;
    }

    /** The works as visits name them, most worthwhile first. */
    List<Work> works() {
        if (option == Option.REPLACE) {
            return List.of(Work.UNIT_REPLACED);
        }
        return remedies.stream().map(Remedy::work).toList();
    }

    /** Expected cost in one state. */
    double in(States states, int i) {
        if (option == Option.REPLACE) {
            return states.replacing(i);
        }
        double cures = cures(states.states.get(i));
        return price + cures * states.cured[i].mean[0] + (1 - cures) * states.uncured(i, option).mean[0];
    }

    /**
     * The best bundle of each option.
     *
     * @param weights of the states, in their order
     * @param callOut paid once for whatever needs a call; 0 with somebody on site
     */
    static List<Bundle> best(States states, Ledger ledger, double[] weights, double callOut) {
        double keeping = 0;
        double replacing = 0;
        double total = 0;
        for (int i = 0; i < weights.length; i++) {
            keeping += weights[i] * states.keeping(i);
            replacing += weights[i] * states.replacing(i);
            total += weights[i];
        }
        Works works = new Works(states, ledger, weights, callOut, keeping, total);
        return List.of(new Bundle(Option.KEEP, List.of(), 0, keeping), works.cleaning(), works.repairing(),
                new Bundle(Option.REPLACE, List.of(), 0, replacing));
    }

    /** The options for a compressor that does not run: cleaning starts none, a repair call tries a part before it sells a unit. */
    static List<Bundle> ofDead(States states, Ledger ledger) {
        List<Bundle> bundles = new ArrayList<>();
        for (Option option : Option.values()) {
            List<Remedy> remedies = option == Option.CLEAN ? List.of(Remedy.FILTER)
                    : option == Option.REPAIR ? List.of(Remedy.CAPACITOR) : List.of();
            double price = 0;
            for (Remedy remedy : remedies) {
                price += Works.price(remedy, ledger, ledger.callOut()) + (remedy.needsCall() ? ledger.callOut() : 0);
            }
            Bundle unsummed = new Bundle(option, remedies, price, 0);
            double expected = 0;
            for (int i = 0; i < states.count(); i++) {
                expected += states.weights[i] * unsummed.in(states, i);
            }
            bundles.add(new Bundle(option, remedies, price, expected));
        }
        return bundles;
    }
}
