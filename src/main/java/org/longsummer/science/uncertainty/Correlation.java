package org.longsummer.science.uncertainty;

/**
 * Correlation coefficients of input quantities, [jcgm-100-2008] 5.2: symmetric, one on the diagonal, no pair beyond ±1.
 */
public final class Correlation {
    private final double[][] coefficients;

    private Correlation(double[][] coefficients) {
        this.coefficients = coefficients;
    }

    /** Inputs that know nothing of one another. */
    public static Correlation none(int inputs) {
        double[][] unit = new double[inputs][inputs];
        for (int i = 0; i < inputs; i++) {
            unit[i][i] = 1;
        }
        return new Correlation(unit);
    }

    /** This with one pair of inputs correlated. */
    public Correlation with(int first, int second, double coefficient) {
        if (first == second || !(Math.abs(coefficient) <= 1)) {
            throw new IllegalArgumentException("a correlation is between two different inputs and from -1 to 1, not "
                    + coefficient + " of " + first + " and " + second);
        }
        double[][] copy = new double[coefficients.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = coefficients[i].clone();
        }
        copy[first][second] = coefficient;
        copy[second][first] = coefficient;
        return new Correlation(copy);
    }

    public int inputs() {
        return coefficients.length;
    }

    public double of(int first, int second) {
        return coefficients[first][second];
    }
}
