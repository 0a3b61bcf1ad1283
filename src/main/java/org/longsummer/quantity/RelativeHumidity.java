package org.longsummer.quantity;

/**
 * Water vapour pressure over the saturation pressure at the same temperature.
 *
 * @param fraction 0 (dry) to 1 (saturated); values beyond are representable so that a mistyped reading can be kept as typed
 */
public record RelativeHumidity(double fraction) implements Quantity {
    public static RelativeHumidity percent(double percent) {
        return new RelativeHumidity(percent / 100);
    }

    public double percent() {
        return fraction * 100;
    }

    @Override
    public String text(UnitSystem system) {
        return Decimal.text(percent(), 0) + " %";
    }
}
