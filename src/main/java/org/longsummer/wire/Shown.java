package org.longsummer.wire;

import java.util.Optional;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;

/**
 * A number as a reader sees it, never without its unit.
 *
 * @param number in the unit named beside it
 * @param unit symbol
 * @param text number and unit, rounded for reading
 */
public record Shown(double number, String unit, String text) {

    public static Shown of(Quantity quantity, UnitSystem system) {
        String text = quantity.text(system);
        return new Shown(number(quantity, system), text.substring(text.indexOf(' ') + 1), text);
    }

    public static Shown of(Altitude altitude, UnitSystem system) {
        double number = system == UnitSystem.US ? altitude.feet() : altitude.metres();
        return whole(number, system == UnitSystem.US ? "ft" : "m");
    }

    /** Sizes of roof units are named in Btu/h everywhere. */
    public static Shown of(CoolingCapacity capacity) {
        return whole(capacity.btuPerHour(), "Btu/h");
    }

    /** An uncertainty: at most two significant digits. */
    public static Shown uncertainty(Quantity quantity, UnitSystem system) {
        double number = number(quantity, system);
        String unit = of(quantity, system).unit();
        int decimals = number >= 9.95 ? 0 : number >= 0.95 ? 1 : 2;
        return new Shown(number, unit, Decimal.text(number, decimals) + " " + unit);
    }

    public static Optional<Shown> of(Optional<? extends Quantity> quantity, UnitSystem system) {
        return quantity.map(value -> of(value, system));
    }

    private static Shown whole(double number, String unit) {
        return new Shown(number, unit, Decimal.text(number, 0) + " " + unit);
    }

    private static double number(Quantity quantity, UnitSystem system) {
        if (quantity instanceof Temperature temperature) {
            return system.number(temperature);
        }
        if (quantity instanceof TemperatureDifference difference) {
            return system.number(difference);
        }
        if (quantity instanceof Current current) {
            return current.amperes();
        }
        if (quantity instanceof Voltage voltage) {
            return voltage.volts();
        }
        if (quantity instanceof RelativeHumidity humidity) {
            return humidity.percent();
        }
        return quantity instanceof Capacitance capacitance ? capacitance.microfarads() : ((RunTime) quantity).minutes();
    }
}
