package org.longsummer.chain.weighing;

import java.util.ArrayList;
import java.util.List;

/**
 * Chooses what one call should do. A state has one thing wrong and each work cures its own, so the gains of works add up and the best set
 * is every work that gains by itself, with one call-out.
 */
final class Works {
    private final Ledger ledger;
    private final double callOut;
    private final double keeping;
    private final double total;
    /** Expected gain less price, by remedy, the call-out left out. */
    private final double[] net = new double[Remedy.ALL.size()];
    /** Weight of the states that a remedy is for. */
    private final double[] suspected = new double[Remedy.ALL.size()];

    /**
     * @param callOut paid once for whatever needs a call
     * @param keeping expected cost of leaving it alone, by the same weights
     * @param total of the weights
     */
    Works(States states, Ledger ledger, double[] weights, double callOut, double keeping, double total) {
        this.ledger = ledger;
        this.callOut = callOut;
        this.keeping = keeping;
        this.total = total;
        for (Remedy remedy : Remedy.ALL) {
            double gain = 0;
            for (int i = 0; i < weights.length; i++) {
                gain += weights[i] * states.gain(i, remedy);
                suspected[remedy.ordinal()] += remedy.cures(states.states.get(i)) > 0 ? weights[i] : 0;
            }
            net[remedy.ordinal()] = gain - total * price(remedy, ledger, callOut);
        }
    }

    /** Cleaning: the filter alone, or a call for every coil that is worth it, whichever is cheaper; where neither pays, the one for what is suspected. */
    Bundle cleaning() {
        Remedy coil = first(List.of(Remedy.CONDENSER_COIL, Remedy.EVAPORATOR_COIL));
        Bundle filter = bundle(Option.CLEAN, List.of(Remedy.FILTER));
        Bundle coils = bundle(Option.CLEAN, around(coil, true));
        boolean anyPays = filter.expected() < keeping || coils.expected() < keeping;
        boolean filterFirst = anyPays ? filter.expected() <= coils.expected()
                : suspected[Remedy.FILTER.ordinal()] >= suspected[coil.ordinal()];
        return filterFirst ? filter : coils;
    }

    /** Repairing: the most worthwhile repair, and whatever else the same call can do at a gain. */
    Bundle repairing() {
        List<Remedy> repairs = Remedy.ALL.stream().filter(remedy -> !remedy.isCleaning()).toList();
        return bundle(Option.REPAIR, around(first(repairs), false));
    }

    /** Of those that gain, the one that gains most; where none does, the one for what is suspected most. */
    private Remedy first(List<Remedy> remedies) {
        Remedy gains = remedies.get(0);
        Remedy likely = remedies.get(0);
        for (Remedy remedy : remedies) {
            gains = net[remedy.ordinal()] > net[gains.ordinal()] ? remedy : gains;
            likely = suspected[remedy.ordinal()] > suspected[likely.ordinal()] ? remedy : likely;
        }
        return net[gains.ordinal()] > 0 ? gains : likely;
    }

    /** One work and all others that gain by themselves once somebody is there; a washed evaporator always gets its filter. */
    private List<Remedy> around(Remedy first, boolean cleaningOnly) {
        List<Remedy> remedies = new ArrayList<>(List.of(first));
        boolean washed = first == Remedy.EVAPORATOR_COIL || net[Remedy.EVAPORATOR_COIL.ordinal()] > 0;
        for (Remedy remedy : Remedy.ALL) {
            boolean worth = net[remedy.ordinal()] > 0 || remedy == Remedy.FILTER && washed;
            if (remedy != first && worth && (remedy.isCleaning() || !cleaningOnly)) {
                remedies.add(remedy);
            }
        }
        return remedies;
    }

    private Bundle bundle(Option option, List<Remedy> remedies) {
        double price = 0;
        double gain = 0;
        boolean call = false;
        for (Remedy remedy : remedies) {
            price += price(remedy, ledger, callOut);
            gain += net[remedy.ordinal()];
            call |= remedy.needsCall();
        }
        double once = call ? callOut : 0;
        return new Bundle(option, List.copyOf(remedies), price + once, keeping - gain + total * once);
    }

    /** Price of a work without the call-out; a quote in hand has it inside. */
    static double price(Remedy remedy, Ledger ledger, double callOut) {
        return ledger.quoted(remedy.work()).map(quoted -> quoted - (remedy.needsCall() ? callOut : 0))
                .orElseGet(() -> ledger.price(remedy));
    }
}
