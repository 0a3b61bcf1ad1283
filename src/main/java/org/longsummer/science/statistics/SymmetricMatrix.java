package org.longsummer.science.statistics;

/** Small symmetric positive definite matrices as plain arrays. */
public final class SymmetricMatrix {
    private SymmetricMatrix() {}

    /**
     * Lower triangle of Cholesky's decomposition.
     *
     * @throws IllegalArgumentException when the matrix is not positive definite
     */
    public static double[][] cholesky(double[][] matrix) {
        int n = matrix.length;
        double[][] lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                if (i == j) {
                    if (!(sum > 0)) {
                        throw new IllegalArgumentException("not positive definite at " + i + ": " + sum);
                    }
                    lower[i][i] = Math.sqrt(sum);
                } else {
                    lower[i][j] = sum / lower[j][j];
                }
            }
        }
        return lower;
    }

    /** The inverse, by Cholesky's decomposition. */
    public static double[][] inverse(double[][] matrix) {
        int n = matrix.length;
        double[][] lower = cholesky(matrix);
        double[][] inverse = new double[n][n];
        for (int column = 0; column < n; column++) {
            double[] x = new double[n];
            for (int i = 0; i < n; i++) {
                double sum = i == column ? 1 : 0;
                for (int k = 0; k < i; k++) {
                    sum -= lower[i][k] * x[k];
                }
                x[i] = sum / lower[i][i];
            }
            for (int i = n - 1; i >= 0; i--) {
                double sum = x[i];
                for (int k = i + 1; k < n; k++) {
                    sum -= lower[k][i] * x[k];
                }
                x[i] = sum / lower[i][i];
            }
            for (int i = 0; i < n; i++) {
                inverse[i][column] = x[i];
            }
        }
        return inverse;
    }
}
