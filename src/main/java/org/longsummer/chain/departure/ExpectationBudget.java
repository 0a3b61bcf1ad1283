package org.longsummer.chain.departure;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.science.uncertainty.Budget;
import org.longsummer.science.uncertainty.Component;
import org.longsummer.science.uncertainty.Component.Source;

/**
 * The budget of measured minus expected for one channel: what is new at the visit (measurement, model), what is left of the class
 * level, of this unit's own level and slopes and of the instruments, and what the histories leave open. The lines add up.
 */
public final class ExpectationBudget {
    private static final int[] SPLIT_OWN = {UnitBaseline.SPLIT, UnitBaseline.SPLIT_DEW_POINT};
    private static final int[] AMPS_OWN = {UnitBaseline.AMPS, UnitBaseline.AMPS_AMBIENT};

    private final UnitBaseline baseline;
    private final double[] design;

    private ExpectationBudget(UnitBaseline baseline, double[] design) {
        this.baseline = baseline;
        this.design = design;
    }

    /**
     * @param channel split or amps
     * @param design the channel's row of {@link UnitBaseline#design}
     * @param scatter variance of this unit's readings over what instruments and model allow for, as learned so far
     * @param histories variance of the sound unit's value over the fault histories, ln²
     */
    public static Budget of(Channel channel, Expectation expectation, UnitBaseline baseline, double[] design, double scatter,
            double histories) {
        boolean split = channel == Channel.SPLIT;
        ExpectationBudget budget = new ExpectationBudget(baseline, design);
        double day = budget.share(split ? UnitBaseline.DAY_SPLIT : UnitBaseline.DAY_AMPS);
        double instruments = budget.share(split ? UnitBaseline.TECHNICIAN_SPLIT : UnitBaseline.TECHNICIAN_AMPS);
        double own = budget.share(split ? SPLIT_OWN : AMPS_OWN);
        double ofClass = Math.min(own, square(baseline.fromClass(channel, design)));
        List<Component> lines = visitLines(split ? expectation.splitComponents() : expectation.ampsComponents(), day, scatter);
        lines.add(line("units of this class and plate, as known at the first visit", Source.CLASS, ofClass));
        lines.add(line("this unit's own level and slope, as learned so far", Source.UNIT, own - ofClass));
        lines.add(line("the technician's instruments this season", Source.INSTRUMENT, instruments));
        lines.add(line("what this unit's history leaves open", Source.UNIT, histories));
        return new Budget(lines);
    }

    private static double square(double x) {
        return x * x;
    }

    private static Component line(String name, Source source, double variance) {
        return new Component(name, source, Math.sqrt(Math.max(0, variance)), "1", 1);
    }

    /** The states' part of the foreseen variance; what two parts share is halved between them. */
    private double share(int... states) {
        double sum = 0;
        for (int i : states) {
            for (int j = 0; j < design.length; j++) {
                sum += design[i] * design[j] * baseline.covariance(i, j);
            }
        }
        return Math.max(0, sum);
    }

    /** A day whose model error was partly seen at an earlier reading leaves less of it; a unit whose readings scatter more has more of all. */
    private static List<Component> visitLines(List<Component> fresh, double day, double scatter) {
        double model = 0;
        for (Component line : fresh) {
            model += line.source() == Source.MODEL ? square(line.contribution()) : 0;
        }
        double left = model > 0 ? Math.sqrt(day / model) : 0;
        List<Component> lines = new ArrayList<>(fresh.size() + 4);
        for (Component line : fresh) {
            double times = Math.sqrt(scatter) * (line.source() == Source.MODEL ? left : 1);
            lines.add(new Component(line.name(), line.source(), line.standardUncertainty() * times, line.unit(), line.sensitivity()));
        }
        return lines;
    }
}
