package org.longsummer.wire;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.departure.Departure;
import org.longsummer.chain.visit.Readings;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.science.uncertainty.Budget;
import org.longsummer.science.uncertainty.Component;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * A reading against what was expected of it.
 *
 * @param measured absent when it was not read
 * @param expected absent when nothing can be expected
 * @param expanded two standard uncertainties of measured minus expected
 * @param departure measured over expected; absent when there is nothing to compare
 * @param budget where the uncertainty comes from, largest first
 * @param text for example {@code 16.5 °F, expected 19.8 ± 2.4 °F}
 */
public record JudgedView(Optional<Shown> measured, Optional<Shown> expected, Optional<Shown> expanded, Optional<DepartureView> departure,
        List<BudgetLine> budget, String text) {

    /**
     * Measured over expected, as a share beyond it.
     *
     * @param percent best estimate
     * @param lowPercent lower end of the bar, two standard uncertainties below
     * @param highPercent upper end of the bar
     */
    public record DepartureView(double percent, double lowPercent, double highPercent) {

        public static DepartureView of(Uncertain logarithm) {
            double expanded = 2 * logarithm.standardUncertainty();
            return new DepartureView(percent(logarithm.value()), percent(logarithm.value() - expanded),
                    percent(logarithm.value() + expanded));
        }

        private static double percent(double logarithm) {
            return 100 * (Math.exp(logarithm) - 1);
        }
    }

    /**
     * One line of the budget.
     *
     * @param name what is uncertain
     * @param source measurement, model, unit, class or instrument
     * @param input standard uncertainty of the input, in its own unit
     * @param effect standard uncertainty that it brings to the expectation
     * @param sharePercent its share of the variance
     */
    public record BudgetLine(String name, String source, String input, String effect, double sharePercent) {}

    public static JudgedView split(Departure departure, UnitSystem system) {
        Readings readings = departure.screening().visit().readings();
        return of(readings.split(), departure.expectedSplit().map(e -> e.value()), departure.expectedSplit().map(e ->
                new TemperatureDifference(2 * e.standardUncertainty().kelvins())), departure.split(),
                departure.expectedSplit().map(e -> lines(e.budget(), system, share ->
                        new TemperatureDifference(share * e.value().kelvins()))).orElse(List.of()), system);
    }

    public static JudgedView amps(Departure departure, UnitSystem system) {
        Readings readings = departure.screening().visit().readings();
        return of(readings.amps(), departure.expectedAmps().map(e -> e.value()), departure.expectedAmps().map(e ->
                new Current(2 * e.standardUncertainty().amperes())), departure.amps(),
                departure.expectedAmps().map(e -> lines(e.budget(), system, share ->
                        new Current(share * e.value().amperes()))).orElse(List.of()), system);
    }

    private static JudgedView of(Optional<? extends Quantity> measured, Optional<? extends Quantity> expected,
            Optional<? extends Quantity> expanded, Optional<Uncertain> departure, List<BudgetLine> budget, UnitSystem system) {
        Optional<Shown> read = Shown.of(measured, system);
        Optional<Shown> should = Shown.of(expected, system);
        Optional<Shown> give = expanded.map(value -> Shown.uncertainty(value, system));
        return new JudgedView(read, should, give, departure.map(DepartureView::of), budget, text(read, should, give));
    }

    private static String text(Optional<Shown> measured, Optional<Shown> expected, Optional<Shown> expanded) {
        String expectation = expected.map(value -> "expected " + withoutUnit(value) + " ±\u00a0" + expanded.map(Shown::text).orElse("")).orElse("");
        if (measured.isEmpty()) {
            return expectation;
        }
        return measured.get().text() + (expectation.isEmpty() ? "" : ", " + expectation);
    }

    private static String withoutUnit(Shown value) {
        return value.text().substring(0, value.text().indexOf(' '));
    }

    /** Turns a share of the expectation into its own unit. */
    private interface Effect {
        Quantity of(double share);
    }

    private static List<BudgetLine> lines(Budget budget, UnitSystem system, Effect effect) {
        double variance = budget.variance();
        return budget.components().stream()
                .sorted(Comparator.comparingLong(JudgedView::rank).reversed())
                .map(line -> new BudgetLine(line.name(), Boxes.word(line.source()), input(line, system),
                        Shown.uncertainty(effect.of(line.contribution()), system).text(),
                        variance > 0 ? 100 * line.contribution() * line.contribution() / variance : 0))
                .toList();
    }

    /** Two lines that differ by less than anybody could read keep their order, so that a phone lists them as a server does. */
    private static long rank(Component line) {
        return (long) (line.contribution() * 1e9 + 0.5);
    }

    private static String input(Component line, UnitSystem system) {
        if (line.unit().equals("K")) {
            return Shown.uncertainty(new TemperatureDifference(line.standardUncertainty()), system).text();
        }
        boolean share = line.unit().equals("1");
        double number = share ? 100 * line.standardUncertainty() : line.standardUncertainty();
        int decimals = number >= 9.95 ? 0 : number >= 0.95 ? 1 : number >= 0.095 ? 2 : 3;
        return (Decimal.text(number, decimals) + " " + (share ? "%" : line.unit())).strip();
    }
}
