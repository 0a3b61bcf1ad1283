package org.longsummer.chain.outlook;

import java.util.List;

/**
 * What a fault of a severity does to a unit: its split, capacity and amps against the same unit sound, at the depot's typical weather in
 * the season. Tables at severities 0, 0.25 ... 1.5; straight between them, held beyond.
 *
 * @param split one ratio a severity, 1 at severity 0
 * @param capacity the same, never rising
 * @param amps the same
 */
public record Effects(List<Double> split, List<Double> capacity, List<Double> amps) {
    /** Distance of the severities, from 0. */
    public static final double STEP = 0.25;
    /** How many severities. */
    public static final int POINTS = 7;
    /** Capacity below this share of the sound unit's is what an owner should not accept. */
    public static final double LEAST_CAPACITY = 0.90;
    /** Amps above this share of the sound unit's are what an owner should not accept. */
    public static final double MOST_AMPS = 1.10;
    /** Nothing wrong. */
    public static final Effects NONE = of(ratio -> 1, ratio -> 1, ratio -> 1);

    public Effects {
        split = checked("split", split);
        capacity = checked("capacity", capacity);
        amps = checked("amps", amps);
    }

    /** A ratio as a function of severity. */
    public interface Law {
        double ratio(double severity);
    }

    /** Tables from functions of severity. */
    public static Effects of(Law split, Law capacity, Law amps) {
        return new Effects(table(split), table(capacity), table(amps));
    }

    public double split(double severity) {
        return at(split, severity);
    }

    public double capacity(double severity) {
        return at(capacity, severity);
    }

    public double amps(double severity) {
        return at(amps, severity);
    }

    /** Share of the way to the limit: 1 where capacity reaches 0.90 or amps 1.10 of the sound unit's. */
    public double shareOfLimit(double severity) {
        return Math.max((1 - capacity(severity)) / (1 - LEAST_CAPACITY), (amps(severity) - 1) / (MOST_AMPS - 1));
    }

    /** Smallest severity at the limit; infinite when none up to 1.5 reaches it. */
    public double severityAtLimit() {
        double before = shareOfLimit(0);
        for (int i = 1; i < POINTS; i++) {
            double after = shareOfLimit(i * STEP);
            if (after >= 1) {
                return firstWithin((i - 1) * STEP);
            }
            before = Math.max(before, after);
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The limit is reached within the piece that begins here; each of the two ratios is straight in it. */
    private double firstWithin(double from) {
        double byCapacity = reach(capacity(from), capacity(from + STEP), LEAST_CAPACITY);
        double byAmps = reach(-amps(from), -amps(from + STEP), -MOST_AMPS);
        return from + STEP * Math.min(byCapacity, byAmps);
    }

    /** Share of the way from start to end at which a falling value reaches the limit; infinite when it does not. */
    private static double reach(double start, double end, double limit) {
        if (start <= limit) {
            return 0;
        }
        return end > limit ? Double.POSITIVE_INFINITY : (start - limit) / (start - end);
    }

    private static double at(List<Double> table, double severity) {
        double position = severity / STEP;
        if (position >= POINTS - 1) {
            return table.get(POINTS - 1);
        }
        int index = (int) position;
        double low = table.get(index);
        return low + (position - index) * (table.get(index + 1) - low);
    }

    private static List<Double> table(Law law) {
        Double[] values = new Double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            values[i] = law.ratio(i * STEP);
        }
        return List.of(values);
    }

    private static List<Double> checked(String name, List<Double> table) {
        boolean fits = table.size() == POINTS && Math.abs(table.get(0) - 1) < 1e-9;
        for (double ratio : table) {
            fits &= ratio > 0 && ratio < 10;
        }
        if (!fits) {
            throw new IllegalArgumentException(name + " ratios " + table + " given; give " + POINTS + " above 0, the first 1");
        }
        return List.copyOf(table);
    }
}
