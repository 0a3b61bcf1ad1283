package org.longsummer.chain.screening;

import java.util.Optional;
import org.longsummer.quantity.Temperature;

/**
 * What a thermometer can show at one place of a roof unit, and what it usually shows there. Common practice of the trade, no
 * published source.
 *
 * @param lowest below it no such place is
 * @param highest above it no such place is
 * @param usuallyFrom a mistyped reading is recognised by falling into the usual range once it is put right
 * @param usuallyTo end of the usual range
 */
record Thermometer(Temperature lowest, Temperature highest, Temperature usuallyFrom, Temperature usuallyTo) {
    static final Thermometer RETURN = fahrenheit(55, 125, 60, 100);
    static final Thermometer SUPPLY = fahrenheit(25, 125, 30, 85);
    static final Thermometer AMBIENT = fahrenheit(60, 140, 65, 122);
    static final Thermometer CONDENSER_ENTERING = fahrenheit(50, 160, 65, 140);
    static final Thermometer CONDENSER_LEAVING = fahrenheit(60, 200, 80, 170);

    private static Thermometer fahrenheit(double lowest, double highest, double usuallyFrom, double usuallyTo) {
        return new Thermometer(Temperature.fahrenheit(lowest), Temperature.fahrenheit(highest), Temperature.fahrenheit(usuallyFrom),
                Temperature.fahrenheit(usuallyTo));
    }

    /** What a reading that cannot be looks like; empty for one that can. */
    Optional<Mistake> mistake(Temperature t) {
        if (t.compareTo(lowest) >= 0 && t.compareTo(highest) <= 0) {
            return Optional.empty();
        }
        double number = t.fahrenheit();
        if (isUsual(Temperature.fahrenheit(number / 10)) || isUsual(Temperature.fahrenheit(number / 100))
                || isUsual(Temperature.fahrenheit(number * 10))) {
            return Optional.of(Mistake.DECIMAL_SLIP);
        }
        if (isUsual(Temperature.celsius(number))) {
            return Optional.of(Mistake.CELSIUS_TYPED);
        }
        return Optional.of(isUsual(Temperature.fahrenheit(t.celsius())) ? Mistake.FAHRENHEIT_TYPED : Mistake.IMPOSSIBLE);
    }

    boolean isCelsiusTyped(Temperature t) {
        return t.compareTo(lowest) < 0 && isUsual(Temperature.celsius(t.fahrenheit()));
    }

    private boolean isUsual(Temperature t) {
        return t.compareTo(usuallyFrom) >= 0 && t.compareTo(usuallyTo) <= 0;
    }
}
