package org.longsummer.chain.learning;

import java.util.List;

/**
 * What the whole fleet shows of slopes that the published curves miss: ln split and ln amps per 10 °F of outdoor air, of dew point
 * and of return air, and per unit of the sun's height.
 *
 * @param split slopes of ln split with {@link #features}
 * @param amps slopes of ln amps with {@link #features}
 */
public record FleetSlopes(double[] split, double[] amps) {
    public static final String KEY = "slopes";
    static final int COUNT = 4;
    public static final FleetSlopes FLAT = new FleetSlopes(new double[COUNT], new double[COUNT]);

    /** Deviations from the middle of the usual conditions, tens of °F; the sun's height as its sine less 0.7. */
    public static double[] features(double ambientF, double dewPointF, double returnF, double sun) {
        return new double[] {(ambientF - 92) / 10, (dewPointF - 57) / 10, (returnF - 77) / 10, sun - 0.7};
    }

    public double onSplit(double[] features) {
        return dot(split, features);
    }

    public double onAmps(double[] features) {
        return dot(amps, features);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** What a judgement reads of a learned level: of the slopes their means, without the covariance that only learning goes on from. */
    static Learned asJudged(Learned learned) {
        return learned.key().equals(KEY) ? new Learned(KEY, learned.numbers().subList(0, 2 * COUNT)) : learned;
    }

    static FleetSlopes of(Learned learned) {
        double[] split = new double[COUNT];
        double[] amps = new double[COUNT];
        List<Double> numbers = learned.numbers();
        for (int i = 0; i < COUNT; i++) {
            split[i] = numbers.get(i);
            amps[i] = numbers.get(COUNT + i);
        }
        return new FleetSlopes(split, amps);
    }
}
