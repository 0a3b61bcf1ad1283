package org.longsummer.science.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class SymmetricMatrixLawTest {
    /** Covariances of things that have ever more in common. */
    private static double[][] matrix(int n) {
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                matrix[i][j] = (1 + i) * (1 + j) * Math.exp(-0.3 * Math.abs(i - j));
            }
        }
        return matrix;
    }

    @Test
    void aMatrixTimesItsInverseIsTheUnitMatrix() {
        for (int n = 1; n < 7; n++) {
            double[][] matrix = matrix(n);
            double[][] inverse = SymmetricMatrix.inverse(matrix);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double sum = 0;
                    for (int k = 0; k < n; k++) {
                        sum += matrix[i][k] * inverse[k][j];
                    }
                    assertEquals(i == j ? 1 : 0, sum, 1e-12);
                }
            }
        }
    }

    @Test
    void aTriangleTimesItselfTurnedIsTheMatrix() {
        double[][] matrix = matrix(5);
        double[][] lower = SymmetricMatrix.cholesky(matrix);
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 5; j++) {
                double sum = 0;
                for (int k = 0; k < 5; k++) {
                    sum += lower[i][k] * lower[j][k];
                }
                assertEquals(matrix[i][j], sum, 1e-12);
                assertEquals(0, j > i ? lower[i][j] : 0, 0);
            }
        }
    }

    @Test
    void whatHasNoRootIsRefused() {
        for (double[][] wrong : new double[][][] {{{0}}, {{-1}}, {{Double.NaN}}, {{1, 2}, {2, 1}}, {{1, 1}, {1, 1}}}) {
            assertThrows(IllegalArgumentException.class, () -> SymmetricMatrix.cholesky(wrong));
        }
    }
}
