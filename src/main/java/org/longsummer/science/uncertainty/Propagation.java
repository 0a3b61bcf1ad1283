package org.longsummer.science.uncertainty;

import java.util.function.ToDoubleFunction;

/**
 * The law of propagation of uncertainty, first order.
 *
 * <p>Source: [jcgm-100-2008] 5.1 and 5.2, annex F.1.2.3 and G.4.1.
 */
public final class Propagation {
    private Propagation() {}

    /**
     * Combined standard uncertainty, eq. 16: the root of the sum over all pairs of cᵢ cⱼ uᵢ uⱼ rᵢⱼ.
     *
     * @param sensitivities change of the result per unit of each input
     * @param uncertainties standard uncertainty of each input, in its own unit
     */
    public static double standardUncertainty(double[] sensitivities, double[] uncertainties, Correlation correlation) {
        return Math.sqrt(Math.max(0, covariance(sensitivities, sensitivities, uncertainties, correlation)));
    }

    /** Covariance of two results of the same inputs, eq. F.2 with first-order sensitivities (example H.2, table H.4). */
    public static double covariance(double[] first, double[] second, double[] uncertainties, Correlation correlation) {
        if (first.length != correlation.inputs() || second.length != first.length || uncertainties.length != first.length) {
            throw new IllegalArgumentException("sensitivities, uncertainties and correlations must be of the same inputs");
        }
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            for (int j = 0; j < second.length; j++) {
                sum += first[i] * uncertainties[i] * second[j] * uncertainties[j] * correlation.of(i, j);
            }
        }
        return sum;
    }

    /**
     * Sensitivities by moving each input by its own standard uncertainty to both sides, 5.1.3 note 2.
     *
     * @param uncertainties all above zero
     */
    public static double[] sensitivities(ToDoubleFunction<double[]> result, double[] inputs, double[] uncertainties) {
        double[] sensitivities = new double[inputs.length];
        double[] moved = inputs.clone();
        for (int i = 0; i < inputs.length; i++) {
            moved[i] = inputs[i] + uncertainties[i];
            double above = result.applyAsDouble(moved);
            moved[i] = inputs[i] - uncertainties[i];
            double below = result.applyAsDouble(moved);
            moved[i] = inputs[i];
            sensitivities[i] = (above - below) / (2 * uncertainties[i]);
        }
        return sensitivities;
    }

    /**
     * Effective degrees of freedom of independent contributions, eq. G.2b (Welch and Satterthwaite).
     *
     * @param contributions |cᵢ| uᵢ
     * @param freedoms degrees of freedom of each; infinite for one that is certain
     */
    public static double effectiveDegreesOfFreedom(double[] contributions, double[] freedoms) {
        double variance = 0;
        double sum = 0;
        for (int i = 0; i < contributions.length; i++) {
            double square = contributions[i] * contributions[i];
            variance += square;
            sum += square * square / freedoms[i];
        }
        return variance * variance / sum;
    }
}
