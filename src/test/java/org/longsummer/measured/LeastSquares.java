package org.longsummer.measured;

import java.util.List;
import org.longsummer.science.statistics.SymmetricMatrix;

/** Ordinary least squares by the normal equations; inputs are few and centred. */
final class LeastSquares {
    private LeastSquares() {}

    static double[] fit(List<double[]> inputs, List<Double> results) {
        int n = inputs.get(0).length;
        double[][] normal = new double[n][n];
        double[] right = new double[n];
        for (int k = 0; k < inputs.size(); k++) {
            double[] x = inputs.get(k);
            for (int i = 0; i < n; i++) {
                right[i] += x[i] * results.get(k);
                for (int j = 0; j < n; j++) {
                    normal[i][j] += x[i] * x[j];
                }
            }
        }
        double[][] inverse = SymmetricMatrix.inverse(normal);
        double[] fitted = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                fitted[i] += inverse[i][j] * right[j];
            }
        }
        return fitted;
    }
}
