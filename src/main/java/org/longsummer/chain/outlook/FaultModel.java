package org.longsummer.chain.outlook;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Growth;

/**
 * How faults come and grow at a depot.
 *
 * @param effects one table a {@link Fault}, in its order
 * @param onsetsPerSeason hazard of each fault per season of running of a sound unit, in the same order
 * @param growth the ways in which a new fault grows; shares add up to 1
 */
public record FaultModel(List<Effects> effects, List<Double> onsetsPerSeason, List<Growth> growth) {

    public FaultModel {
        effects = List.copyOf(effects);
        onsetsPerSeason = List.copyOf(onsetsPerSeason);
        growth = List.copyOf(growth);
        List<String> problems = problems(effects, onsetsPerSeason, growth);
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", problems));
        }
    }

    public Effects effects(Fault fault) {
        return effects.get(fault.ordinal());
    }

    /** Hazard per season of any new fault. */
    public double onsets() {
        double sum = 0;
        for (double hazard : onsetsPerSeason) {
            sum += hazard;
        }
        return sum;
    }

    private static List<String> problems(List<Effects> effects, List<Double> onsets, List<Growth> growth) {
        List<String> problems = new ArrayList<>();
        if (effects.size() != Fault.COUNT || onsets.size() != Fault.COUNT) {
            problems.add("tables of " + effects.size() + " and hazards of " + onsets.size() + " faults given; give " + Fault.COUNT);
        }
        for (double hazard : onsets) {
            if (!(hazard >= 0 && hazard < 100)) {
                problems.add("onsets per season: " + hazard + " given; give 0 or more");
            }
        }
        double shares = 0;
        for (Growth way : growth) {
            shares += way.share();
        }
        if (!(Math.abs(shares - 1) < 1e-9)) {
            problems.add("shares of growth add up to " + shares + "; they must add up to 1");
        }
        return problems;
    }
}
