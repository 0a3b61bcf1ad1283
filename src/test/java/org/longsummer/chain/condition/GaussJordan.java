package org.longsummer.chain.condition;

/** The inverse of a small matrix by elimination with pivots. */
final class GaussJordan {
    private GaussJordan() {}

    static double[][] inverse(double[][] matrix) {
        int n = matrix.length;
        double[][] work = new double[n][2 * n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(matrix[i], 0, work[i], 0, n);
            work[i][n + i] = 1;
        }
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int i = column; i < n; i++) {
                pivot = Math.abs(work[i][column]) > Math.abs(work[pivot][column]) ? i : pivot;
            }
            double[] swap = work[column];
            work[column] = work[pivot];
            work[pivot] = swap;
            double divisor = work[column][column];
            for (int j = 0; j < 2 * n; j++) {
                work[column][j] /= divisor;
            }
            for (int i = 0; i < n; i++) {
                double factor = i == column ? 0 : work[i][column];
                for (int j = 0; j < 2 * n; j++) {
                    work[i][j] -= factor * work[column][j];
                }
            }
        }
        double[][] inverse = new double[n][n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(work[i], n, inverse[i], 0, n);
        }
        return inverse;
    }
}
