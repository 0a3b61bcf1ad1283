package org.longsummer.science.statistics;

/**
 * One observed life: it failed, or it was still running when last heard of (right-censored).
 *
 * @param entered age at which it came under observation, 0 for a new one; a unit first seen old has shown nothing about its youth
 * @param left age at which it failed or was last heard of, above {@code entered}
 * @param failed whether it failed then
 */
public record Lifetime(double entered, double left, boolean failed) {
    public Lifetime {
        if (!(entered >= 0 && left > entered && left < 1e12)) {
            throw new IllegalArgumentException("lifetime from age " + entered + " to " + left + " given; give 0 or more, and an end after it");
        }
    }

    public static Lifetime failedAt(double age) {
        return new Lifetime(0, age, true);
    }

    public static Lifetime runningAt(double age) {
        return new Lifetime(0, age, false);
    }
}
