package org.longsummer.chain.outlook;

import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Growth;

/** How likely a unit that is sound now quits, within a span of running, of a fault that begins and grows in it. */
final class NewFaults {
    private static final double STEP = 0.05;
    private static final int STEPS = 60;
    private final double[] byStep = new double[STEPS + 1];

    NewFaults(FaultModel model) {
        for (int step = 1; step <= STEPS; step++) {
            byStep[step] = byStep[step - 1] + begunBefore(model, (step - 0.5) * STEP);
        }
    }

    /** Cumulative hazard; held beyond three seasons. */
    double within(double seasons) {
        double position = Math.min(seasons / STEP, STEPS - 1e-9);
        int index = (int) position;
        return byStep[index] + (position - index) * (byStep[index + 1] - byStep[index]);
    }

    /** Onsets at an even hazard within one step, so many seasons before the end, each followed by its own growth until then. */
    private static double begunBefore(FaultModel model, double seasons) {
        double sum = 0;
        for (Fault fault : Fault.values()) {
            double hazard = model.onsetsPerSeason().get(fault.ordinal());
            if (hazard > 0) {
                for (Growth way : model.growth()) {
                    sum += hazard * STEP * way.share()
                            * QuittingHazard.share(QuittingHazard.ofFault(fault, way.step(), way.ratePerSeason(), seasons));
                }
            }
        }
        return sum;
    }
}
