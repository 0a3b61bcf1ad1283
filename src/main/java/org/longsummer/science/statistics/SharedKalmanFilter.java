package org.longsummer.science.statistics;

/**
 * A Kalman filter whose covariance is shared by many hypotheses, each of which keeps a mean of its own: while hypotheses differ only
 * in what they subtract from an observation, gain and covariance are the same for all.
 *
 * <p>Plain arrays, unit-blind on purpose. Source: Kalman 1960. Observations are at most a few, so their covariance is inverted
 * by Cholesky's method; {@link #foresee} foresees, {@link #accept} takes them into account.
 */
public final class SharedKalmanFilter {
    private final int states;
    private final double[][] covariance;

    /** @param variances prior variances of the states, independent of one another */
    public SharedKalmanFilter(double[] variances) {
        states = variances.length;
        covariance = new double[states][states];
        for (int i = 0; i < states; i++) {
            covariance[i][i] = variances[i];
        }
    }

    private SharedKalmanFilter(SharedKalmanFilter other) {
        states = other.states;
        covariance = new double[states][];
        for (int i = 0; i < states; i++) {
            covariance[i] = other.covariance[i].clone();
        }
    }

    /** The same filter, to go on from here without changing this one. */
    public SharedKalmanFilter copy() {
        return new SharedKalmanFilter(this);
    }

    public double covariance(int i, int j) {
        return covariance[i][j];
    }

    /** The state walks: its variance grows. */
    public void diffuse(int state, double variance) {
        covariance[state][state] += variance;
    }

    /** The state starts anew: what was known of it, and through it, is forgotten. */
    public void renew(int state, double variance) {
        for (int i = 0; i < states; i++) {
            covariance[state][i] = 0;
            covariance[i][state] = 0;
        }
        covariance[state][state] = variance;
    }

    /**
     * Foresees a set of simultaneous observations; nothing is changed until {@link #accept}. The means are the caller's to move, by
     * {@link Step#gain} times the surprise.
     *
     * @param design one row per observation: how it depends on the states
     * @param noise covariance of the observations' own errors
     */
    public Foresight foresee(double[][] design, double[][] noise) {
        int m = design.length;
        double[][] crossed = new double[states][m];
        for (int i = 0; i < states; i++) {
            for (int k = 0; k < m; k++) {
                double sum = 0;
                for (int j = 0; j < states; j++) {
                    sum += covariance[i][j] * design[k][j];
                }
                crossed[i][k] = sum;
            }
        }
        double[][] predicted = new double[m][m];
        for (int k = 0; k < m; k++) {
            for (int l = 0; l < m; l++) {
                double sum = noise[k][l];
                for (int j = 0; j < states; j++) {
                    sum += design[k][j] * crossed[j][l];
                }
                predicted[k][l] = sum;
            }
        }
        return new Foresight(predicted, crossed);
    }

    /** Takes the observations into account: P − K S Kᵀ, kept symmetric. */
    public void accept(Step step) {
        int m = step.gain()[0].length;
        for (int i = 0; i < states; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k < m; k++) {
                    sum += step.gain()[i][k] * step.crossed()[j][k];
                }
                double value = covariance[i][j] - sum;
                covariance[i][j] = value;
                covariance[j][i] = value;
            }
            covariance[i][i] = Math.max(covariance[i][i], 1e-12);
        }
    }

    /**
     * Observations as the filter foresees them.
     *
     * @param predicted covariance of the observations before they are made
     * @param crossed covariance of states with observations
     */
    public record Foresight(double[][] predicted, double[][] crossed) {

        /** The step to take when only some of the observations are made. */
        public Step whenMade(int[] made) {
            int m = made.length;
            double[][] some = new double[m][m];
            double[][] someCrossed = new double[crossed.length][m];
            for (int k = 0; k < m; k++) {
                for (int l = 0; l < m; l++) {
                    some[k][l] = predicted[made[k]][made[l]];
                }
                for (int i = 0; i < crossed.length; i++) {
                    someCrossed[i][k] = crossed[i][made[k]];
                }
            }
            double[][] inverse = SymmetricMatrix.inverse(some);
            double[][] gain = new double[crossed.length][m];
            for (int i = 0; i < gain.length; i++) {
                for (int k = 0; k < m; k++) {
                    double sum = 0;
                    for (int l = 0; l < m; l++) {
                        sum += someCrossed[i][l] * inverse[l][k];
                    }
                    gain[i][k] = sum;
                }
            }
            return new Step(gain, someCrossed);
        }
    }

    /**
     * What a set of made observations does.
     *
     * @param gain how far each state moves per unit of each surprise
     * @param crossed covariance of states with the observations made
     */
    public record Step(double[][] gain, double[][] crossed) {}
}
