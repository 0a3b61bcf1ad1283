package org.longsummer.quantity;

/**
 * Heat taken from the return air per time; a unit's nominal size.
 *
 * @param watts W
 */
public record CoolingCapacity(double watts) {
    private static final double WATTS_PER_BTU_PER_HOUR = 0.29307107;

    public static CoolingCapacity btuPerHour(double btuPerHour) {
        return new CoolingCapacity(btuPerHour * WATTS_PER_BTU_PER_HOUR);
    }

    public double btuPerHour() {
        return watts / WATTS_PER_BTU_PER_HOUR;
    }
}
