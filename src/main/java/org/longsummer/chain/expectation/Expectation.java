package org.longsummer.chain.expectation;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.screening.Screening;
import org.longsummer.science.cooling.RoofUnit;
import org.longsummer.science.uncertainty.Component;

/**
 * What a sound unit of this class and plate should show in the conditions of a visit, before anything is learned of this very unit.
 *
 * @param screening the visit
 * @param surroundings conditions as the unit felt them
 * @param machine the sound unit in them
 * @param lnSplit natural logarithm of the expected split in kelvins, as the visit's probes would read it
 * @param lnAmps natural logarithm of the expected amps, at the class default merged with the plate
 * @param lnAmpsLevelU standard uncertainty of the amps level that default and plate leave
 * @param influences what makes measured differ from expected at this one visit
 */
public record Expectation(Screening screening, Surroundings surroundings, RoofUnit machine, double lnSplit, double lnAmps,
        double lnAmpsLevelU, List<Influence> influences) {

    /**
     * One uncertain influence on ln(measured / expected), on split and amps at once, so that their correlation is kept.
     *
     * @param name in words
     * @param source measurement or model
     * @param unit symbol of the input's unit
     * @param u standard uncertainty of the input
     * @param onSplit change of ln(measured / expected split) per unit of the input
     * @param onAmps change of ln(measured / expected amps) per unit of the input
     */
    public record Influence(String name, Component.Source source, String unit, double u, double onSplit, double onAmps) {}

    /** Variances and covariance of ln(measured / expected) from this visit alone: split, covariance, amps. */
    public double[] covariance() {
        double split = 0;
        double both = 0;
        double amps = 0;
        for (Influence i : influences) {
            double s = i.onSplit * i.u;
            double a = i.onAmps * i.u;
            split += s * s;
            both += s * a;
            amps += a * a;
        }
        return new double[] {split, both, amps};
    }

    /** The visit's own lines of the split's budget. */
    public List<Component> splitComponents() {
        List<Component> lines = new ArrayList<>();
        for (Influence i : influences) {
            if (i.onSplit != 0) {
                lines.add(new Component(i.name, i.source, i.u, i.unit, i.onSplit));
            }
        }
        return lines;
    }

    /** The visit's own lines of the amps' budget. */
    public List<Component> ampsComponents() {
        List<Component> lines = new ArrayList<>();
        for (Influence i : influences) {
            if (i.onAmps != 0) {
                lines.add(new Component(i.name, i.source, i.u, i.unit, i.onAmps));
            }
        }
        return lines;
    }
}
