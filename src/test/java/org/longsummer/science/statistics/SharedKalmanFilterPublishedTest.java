package org.longsummer.science.statistics;

import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;

/** A filter whose states stand still and of which next to nothing is known before is least squares: against certified regressions. */
class SharedKalmanFilterPublishedTest {
    private static final double RESIDUAL_MEAN_SQUARE = 0.782864662630069;
    /** A thousand around 0, and a hundred: what is known before moves no result by a millionth. */
    private static final double[] NEXT_TO_NOTHING = {1e6, 1e4};
    private static final double ALLOWED = 1e-6;

    @Test
    void aLineThroughNorris() {
        SharedKalmanFilter filter = new SharedKalmanFilter(NEXT_TO_NOTHING);
        double[] mean = new double[2];
        double[][] noise = {{RESIDUAL_MEAN_SQUARE}};
        for (ReferenceTable.Row row : ReferenceTable.read("nist_strd_norris").rows()) {
            double x = row.number("x");
            double surprise = row.number("y") - mean[0] - mean[1] * x;
            SharedKalmanFilter.Step step = filter.foresee(new double[][] {{1, x}}, noise).whenMade(new int[] {0});
            for (int i = 0; i < mean.length; i++) {
                mean[i] += step.gain()[i][0] * surprise;
            }
            filter.accept(step);
        }
        try (Comparison comparison = Comparison.relative(getClass(), "a line by the filter, observation by observation", "nist-strd", ALLOWED)) {
            comparison.point("B0", mean[0], -0.262323073774029);
            comparison.point("B1", mean[1], 1.00211681802045);
            comparison.point("standard deviation of B0", Math.sqrt(filter.covariance(0, 0)), 0.232818234301152);
            comparison.point("standard deviation of B1", Math.sqrt(filter.covariance(1, 1)), 0.429796848199937e-3);
        }
    }
}
