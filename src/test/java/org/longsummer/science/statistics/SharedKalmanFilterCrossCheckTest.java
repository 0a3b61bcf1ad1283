package org.longsummer.science.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;

/**
 * The filter, visit by visit, against one generalised least-squares solution of everything at once: every walk, every offset that
 * starts anew and every first value is an unknown of its own with its prior, and all observations are taken together.
 */
class SharedKalmanFilterCrossCheckTest {
    private static final int STATES = 6;
    private static final int CHANNELS = 3;
    private static final double ROUNDING = 1e-9;

    /** The batch solution: states as sums of independent unknowns. */
    private static final class Batch {
        private final List<Double> means = new ArrayList<>();
        private final List<Double> variances = new ArrayList<>();
        private final List<List<Integer>> parts = new ArrayList<>();
        private final List<double[][]> designs = new ArrayList<>();
        private final List<double[][]> noises = new ArrayList<>();
        private final List<double[]> observations = new ArrayList<>();
        private final List<List<List<Integer>>> partsThen = new ArrayList<>();

        Batch(double[] variances) {
            for (double variance : variances) {
                parts.add(new ArrayList<>(List.of(unknown(0, variance))));
            }
        }

        private int unknown(double mean, double variance) {
            means.add(mean);
            variances.add(variance);
            return means.size() - 1;
        }

        void diffuse(int state, double variance) {
            parts.get(state).add(unknown(0, variance));
        }

        void renew(int state, double mean, double variance) {
            parts.set(state, new ArrayList<>(List.of(unknown(mean, variance))));
        }

        void observe(double[][] design, double[][] noise, double[] values) {
            designs.add(design);
            noises.add(noise);
            observations.add(values);
            partsThen.add(parts.stream().<List<Integer>>map(ArrayList::new).toList());
        }

        /** Mean of each state, then the covariance's rows. */
        double[][] solve() {
            int n = means.size();
            double[][] information = new double[n][n];
            double[] right = new double[n];
            for (int i = 0; i < n; i++) {
                information[i][i] = 1 / variances.get(i);
                right[i] = means.get(i) / variances.get(i);
            }
            for (int v = 0; v < designs.size(); v++) {
                add(information, right, v);
            }
            double[][] covariance = SymmetricMatrix.inverse(information);
            double[][] solution = new double[STATES + 1][STATES];
            for (int s = 0; s < STATES; s++) {
                for (int a : parts.get(s)) {
                    for (int i = 0; i < n; i++) {
                        solution[0][s] += covariance[a][i] * right[i];
                    }
                    for (int t = 0; t < STATES; t++) {
                        for (int b : parts.get(t)) {
                            solution[1 + s][t] += covariance[a][b];
                        }
                    }
                }
            }
            return solution;
        }

        private void add(double[][] information, double[] right, int visit) {
            double[][] weight = SymmetricMatrix.inverse(noises.get(visit));
            double[][] rows = new double[observations.get(visit).length][means.size()];
            for (int k = 0; k < rows.length; k++) {
                for (int s = 0; s < STATES; s++) {
                    for (int unknown : partsThen.get(visit).get(s)) {
                        rows[k][unknown] += designs.get(visit)[k][s];
                    }
                }
            }
            for (int k = 0; k < rows.length; k++) {
                for (int l = 0; l < rows.length; l++) {
                    for (int i = 0; i < means.size(); i++) {
                        right[i] += rows[k][i] * weight[k][l] * observations.get(visit)[l];
                        for (int j = 0; j < means.size(); j++) {
                            information[i][j] += rows[k][i] * weight[k][l] * rows[l][j];
                        }
                    }
                }
            }
        }
    }

    @Test
    void theSameAsAllAtOnce() {
        try (Comparison mean = Comparison.absolute(getClass(), "Kalman filter, means, against all observations at once", "", "least-squares", ROUNDING);
                Comparison covariance = Comparison.absolute(getClass(), "Kalman filter, covariance, against all observations at once", "",
                        "least-squares", ROUNDING)) {
            for (int seed = 1; seed <= 20; seed++) {
                compare(new Random(seed), "seed " + seed, mean, covariance);
            }
        }
    }

    private static void compare(Random random, String where, Comparison means, Comparison covariances) {
        double[] prior = {0.03, 0.01, 0.0004, 0.0002, 0.0005, 0.0011};
        SharedKalmanFilter filter = new SharedKalmanFilter(prior);
        Batch batch = new Batch(prior);
        double[] mean = new double[STATES];
        for (int visit = 0; visit < 25; visit++) {
            double walk = 1e-4 * random.nextDouble();
            filter.diffuse(0, walk);
            batch.diffuse(0, walk);
            if (random.nextBoolean()) {
                double start = 0.02 * random.nextGaussian();
                filter.renew(4, 0.0005);
                mean[4] = start;
                batch.renew(4, start, 0.0005);
            }
            double[][] design = new double[CHANNELS][STATES];
            double[][] noise = new double[CHANNELS][CHANNELS];
            for (int k = 0; k < CHANNELS; k++) {
                for (int s = 0; s < STATES; s++) {
                    design[k][s] = random.nextGaussian();
                }
                noise[k][k] = 0.001 + 0.002 * random.nextDouble();
            }
            noise[0][1] = 0.4 * Math.sqrt(noise[0][0] * noise[1][1]);
            noise[1][0] = noise[0][1];
            int[][] choices = {{0, 1, 2}, {0}, {1, 2}, {0, 1}};
            observe(random, filter, batch, mean, design, noise, choices[random.nextInt(choices.length)]);
        }
        double[][] solution = batch.solve();
        for (int s = 0; s < STATES; s++) {
            means.point(where + ", state " + s, mean[s], solution[0][s]);
            for (int t = 0; t < STATES; t++) {
                covariances.point(where + ", states " + s + " and " + t, filter.covariance(s, t), solution[1 + s][t]);
            }
        }
    }

    private static void observe(Random random, SharedKalmanFilter filter, Batch batch, double[] mean, double[][] design, double[][] noise,
            int[] made) {
        double[] values = new double[made.length];
        double[] surprise = new double[made.length];
        double[][] someDesign = new double[made.length][];
        double[][] someNoise = new double[made.length][made.length];
        for (int k = 0; k < made.length; k++) {
            values[k] = 0.1 * random.nextGaussian();
            surprise[k] = values[k];
            someDesign[k] = design[made[k]];
            for (int s = 0; s < STATES; s++) {
                surprise[k] -= design[made[k]][s] * mean[s];
            }
            for (int l = 0; l < made.length; l++) {
                someNoise[k][l] = noise[made[k]][made[l]];
            }
        }
        SharedKalmanFilter.Step step = filter.foresee(design, noise).whenMade(made);
        for (int s = 0; s < STATES; s++) {
            for (int k = 0; k < made.length; k++) {
                mean[s] += step.gain()[s][k] * surprise[k];
            }
        }
        filter.accept(step);
        batch.observe(someDesign, someNoise, values);
    }

    /** A copy goes on alone. */
    @Test
    void aCopyDoesNotChangeTheOriginal() {
        SharedKalmanFilter filter = new SharedKalmanFilter(new double[] {1, 2});
        SharedKalmanFilter copy = filter.copy();
        copy.accept(copy.foresee(new double[][] {{1, 0.5}}, new double[][] {{0.3}}).whenMade(new int[] {0}));
        assertEquals(1, filter.covariance(0, 0));
        assertEquals(0, filter.covariance(0, 1));
        assertTrue(copy.covariance(0, 0) < 1);
    }
}
