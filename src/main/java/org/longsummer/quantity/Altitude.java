package org.longsummer.quantity;

/**
 * Height above mean sea level; negative below it.
 *
 * @param metres m
 */
public record Altitude(double metres) {
    private static final double METRES_PER_FOOT = 0.3048;
    public static final Altitude SEA_LEVEL = new Altitude(0);

    public static Altitude feet(double feet) {
        return new Altitude(feet * METRES_PER_FOOT);
    }

    public double feet() {
        return metres / METRES_PER_FOOT;
    }
}
