package org.longsummer.science.moistair;

import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.Temperature;

/**
 * Pressure and temperature of the standard atmosphere.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2017), ch. 1, eq. 3 and 4. Range: −5,000 to 11,000 m.
 */
public final class StandardAtmosphere {
    private StandardAtmosphere() {}

    /** Eq. 3: p = 101325 (1 − 2.25577e-5 Z)^5.2559. */
    public static Pressure pressure(Altitude altitude) {
        return new Pressure(101325 * Math.pow(1 - 2.25577e-5 * altitude.metres(), 5.2559));
    }

    /** Eq. 4: t = 15 − 0.0065 Z, °C. */
    public static Temperature temperature(Altitude altitude) {
        return Temperature.celsius(15 - 0.0065 * altitude.metres());
    }
}
