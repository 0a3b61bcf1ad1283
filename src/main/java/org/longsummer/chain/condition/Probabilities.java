package org.longsummer.chain.condition;

/**
 * Probabilities of no condition, of each of the six and of a fault outside them; they add up to one.
 */
public final class Probabilities {
    private final double[] values;

    private Probabilities(double[] values) {
        this.values = values;
    }

    /** From weights by {@link Condition#ordinal()} of NONE to OTHER; scaled to add up to one. */
    public static Probabilities of(double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        double[] scaled = new double[Condition.OTHER.ordinal() + 1];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = weights[i] / sum;
        }
        return new Probabilities(scaled);
    }

    /** @return 0 for NOT_COOLING, which is seen and not inferred */
    public double of(Condition condition) {
        return condition.ordinal() < values.length ? values[condition.ordinal()] : 0;
    }

    /** The likeliest fault, whether or not a fault is likely. */
    public Condition likeliestFault() {
        Condition best = Condition.CONDENSER_FOULING;
        for (Condition condition : Condition.values()) {
            if (condition != Condition.NONE && of(condition) > of(best)) {
                best = condition;
            }
        }
        return best;
    }
}
