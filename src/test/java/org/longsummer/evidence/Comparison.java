package org.longsummer.evidence;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

/**
 * Compares points of one quantity with one source, and on closing records the worst deviation and fails when any point is beyond
 * what is allowed, naming all of them.
 *
 * <pre>{@code
 * try (Comparison comparison = Comparison.relative(getClass(), "saturation pressure", "hof-2017", 0.0003)) {
 *     comparison.point("25 °C", pressure.pascals(), 3169.7);
 * }
 * }</pre>
 */
public final class Comparison implements AutoCloseable {
    private enum Kind { ABSOLUTE, RELATIVE, BAND }

    private final Class<?> test;
    private final String quantity;
    private final String source;
    private final Kind kind;
    private final String unit;
    private final double allowed;
    private final List<String> beyond = new ArrayList<>();
    private int points;
    private double worst;

    private Comparison(Class<?> test, String quantity, String source, Kind kind, String unit, double allowed) {
        this.test = test;
        this.quantity = quantity;
        this.source = source;
        this.kind = kind;
        this.unit = unit;
        this.allowed = allowed;
    }

    /** @param allowed largest deviation, in {@code unit} */
    public static Comparison absolute(Class<?> test, String quantity, String unit, String source, double allowed) {
        return new Comparison(test, quantity, source, Kind.ABSOLUTE, unit, allowed);
    }

    /** @param allowed largest deviation as a share of the expected value; shown in percent */
    public static Comparison relative(Class<?> test, String quantity, String source, double allowed) {
        return new Comparison(test, quantity, source, Kind.RELATIVE, "%", allowed);
    }

    /** The source states a band; deviations are shares of half its width. */
    public static Comparison bands(Class<?> test, String quantity, String source) {
        return new Comparison(test, quantity, source, Kind.BAND, "%", 1);
    }

    public void point(String where, double actual, double expected) {
        double deviation = Math.abs(actual - expected);
        add(where, kind == Kind.RELATIVE ? deviation / Math.abs(expected) : deviation, actual + " instead of " + expected);
    }

    public void band(String where, double actual, double low, double high) {
        double half = (high - low) / 2;
        add(where, Math.abs(actual - low - half) / half, actual + " outside " + low + " to " + high);
    }

    private void add(String where, double deviation, String difference) {
        points++;
        if (!(deviation <= allowed)) {
            beyond.add(where + ": " + difference);
        }
        worst = !(deviation <= worst) ? deviation : worst;
    }

    @Override
    public void close() {
        assertTrue(points > 0, () -> quantity + ": no point was compared");
        double scale = kind == Kind.ABSOLUTE ? 1 : 100;
        String limit = kind == Kind.BAND ? "the band" : (Significant.two(allowed * scale) + " " + unit).trim();
        String found = worst < allowed / 100 ? "under 1 % of allowed"
                : kind == Kind.BAND ? Significant.two(worst * scale) + " % of half the band" : (Significant.two(worst * scale) + " " + unit).trim();
        ValidationRegister.record(test, new ValidationRegister.Row(quantity, source, test.getSimpleName(), points, found, limit));
        assertTrue(beyond.isEmpty(), () -> quantity + " against " + source + ", allowed " + limit + ": " + String.join("; ", beyond));
    }
}
