package org.longsummer.science.uncertainty;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;

/** The worked examples of [jcgm-100-2008], annex H. */
class PropagationPublishedTest {
    private static final String SOURCE = "jcgm-100-2008";

    /** Half the last digit of 31.7 nm; the degrees of freedom are printed as 16 after cutting 16.7 off. */
    @Test
    void h1EndGauge() {
        List<ReferenceTable.Row> rows = ReferenceTable.read("jcgm100_h1").rows();
        double[] contributions = rows.stream().mapToDouble(row -> row.number("contribution_nm")).toArray();
        double[] freedoms = rows.stream().mapToDouble(row -> row.number("degrees_of_freedom")).toArray();
        double[] ones = rows.stream().mapToDouble(row -> 1).toArray();
        try (Comparison uncertainty = Comparison.absolute(getClass(), "GUM example H.1, combined standard uncertainty", "nm", SOURCE, 0.05);
                Comparison freedom = Comparison.bands(getClass(), "GUM example H.1, effective degrees of freedom", SOURCE)) {
            uncertainty.point("H.1", Propagation.standardUncertainty(ones, contributions, Correlation.none(rows.size())), 31.7);
            freedom.band("H.1", Propagation.effectiveDegreesOfFreedom(contributions, freedoms), 16.65, 16.8);
        }
    }

    /**
     * Half the last printed digit, save for the reactance's uncertainty: 0.2956 is printed as 0.295, because the annex goes on with
     * correlations rounded to two digits.
     */
    @Test
    void h2ResistanceAndReactance() {
        ReferenceTable results = ReferenceTable.read("jcgm100_h2_results");
        try (Comparison values = Comparison.absolute(getClass(), "GUM example H.2, values", "Ω", SOURCE, 0.0005001);
                Comparison uncertainties = Comparison.absolute(getClass(), "GUM example H.2, standard uncertainties", "Ω", SOURCE, 0.001);
                Comparison inputs = Comparison.absolute(getClass(), "GUM example H.2, correlations of the inputs", "", SOURCE, 0.005001);
                Comparison outputs = Comparison.absolute(getClass(), "GUM example H.2, correlations of the results", "", SOURCE, 0.0005001)) {
            Example example = Example.read();
            for (ReferenceTable.Row row : results.rows()) {
                String quantity = row.text("quantity");
                Comparison comparison = quantity.endsWith("_u") ? uncertainties : !quantity.startsWith("correlation") ? values
                        : quantity.contains("current") || quantity.contains("phase") ? inputs : outputs;
                comparison.point(quantity, example.of(quantity), row.number("value"));
            }
        }
    }

    /** The example, worked from its observations. */
    private record Example(double[] means, double[] uncertainties, Correlation correlation) {
        private static final ToDoubleFunction<double[]> IMPEDANCE = x -> x[0] / x[1];
        private static final ToDoubleFunction<double[]> RESISTANCE = x -> x[0] / x[1] * Math.cos(x[2]);
        private static final ToDoubleFunction<double[]> REACTANCE = x -> x[0] / x[1] * Math.sin(x[2]);

        static Example read() {
            List<ReferenceTable.Row> rows = ReferenceTable.read("jcgm100_h2_observations").rows();
            double[] volts = rows.stream().mapToDouble(row -> row.number("voltage_v")).toArray();
            double[] amperes = rows.stream().mapToDouble(row -> row.number("current_ma") / 1000).toArray();
            double[] phase = rows.stream().mapToDouble(row -> row.number("phase_rad")).toArray();
            TypeA v = TypeA.of(volts);
            TypeA i = TypeA.of(amperes);
            TypeA phi = TypeA.of(phase);
            Correlation correlation = Correlation.none(3).with(0, 1, TypeA.correlation(volts, amperes))
                    .with(0, 2, TypeA.correlation(volts, phase)).with(1, 2, TypeA.correlation(amperes, phase));
            return new Example(new double[] {v.mean(), i.mean(), phi.mean()},
                    new double[] {v.standardUncertainty(), i.standardUncertainty(), phi.standardUncertainty()}, correlation);
        }

        double of(String quantity) {
            return switch (quantity) {
                case "resistance" -> RESISTANCE.applyAsDouble(means);
                case "reactance" -> REACTANCE.applyAsDouble(means);
                case "impedance" -> IMPEDANCE.applyAsDouble(means);
                case "resistance_u" -> uncertainty(RESISTANCE);
                case "reactance_u" -> uncertainty(REACTANCE);
                case "impedance_u" -> uncertainty(IMPEDANCE);
                case "correlation_voltage_current" -> correlation.of(0, 1);
                case "correlation_voltage_phase" -> correlation.of(0, 2);
                case "correlation_current_phase" -> correlation.of(1, 2);
                case "correlation_resistance_reactance" -> correlationOf(RESISTANCE, REACTANCE);
                case "correlation_resistance_impedance" -> correlationOf(RESISTANCE, IMPEDANCE);
                case "correlation_reactance_impedance" -> correlationOf(REACTANCE, IMPEDANCE);
                default -> throw new IllegalArgumentException("the example has no " + quantity);
            };
        }

        private double uncertainty(ToDoubleFunction<double[]> result) {
            return Propagation.standardUncertainty(sensitivities(result), uncertainties, correlation);
        }

        private double correlationOf(ToDoubleFunction<double[]> first, ToDoubleFunction<double[]> second) {
            return Propagation.covariance(sensitivities(first), sensitivities(second), uncertainties, correlation)
                    / uncertainty(first) / uncertainty(second);
        }

        private double[] sensitivities(ToDoubleFunction<double[]> result) {
            return Propagation.sensitivities(result, means, uncertainties);
        }
    }
}
