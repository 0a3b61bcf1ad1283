package org.longsummer.science.moistair;

import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.Temperature;

/**
 * Pressure and temperature of the standard atmosphere.
 *
 * <p>Source: [hof-2017] ch. 1, eq. 3 and 4. Range: −5,000 to 11,000 m; beyond it, refused. Stated error: none given; eq. 3 meets
 * the printed table 1 within its last digit.
 */
public final class StandardAtmosphere {
    /** Lowest and highest place for which the relations are published. */
    public static final Altitude LOWEST = new Altitude(-5_000);
    public static final Altitude HIGHEST = new Altitude(11_000);

    private StandardAtmosphere() {}

    /**
     * Eq. 3: p = 101325 (1 − 2.25577e-5 Z)^5.2559.
     *
     * @throws IllegalArgumentException outside −5,000 to 11,000 m
     */
    public static Pressure pressure(Altitude altitude) {
        return new Pressure(101325 * Math.pow(1 - 2.25577e-5 * checked(altitude), 5.2559));
    }

    /**
     * Eq. 4: t = 15 − 0.0065 Z, °C.
     *
     * @throws IllegalArgumentException outside −5,000 to 11,000 m
     */
    public static Temperature temperature(Altitude altitude) {
        return Temperature.celsius(15 - 0.0065 * checked(altitude));
    }

    private static double checked(Altitude altitude) {
        double metres = altitude.metres();
        if (!(metres >= LOWEST.metres() && metres <= HIGHEST.metres())) {
            throw new IllegalArgumentException("the standard atmosphere is published from -5000 to 11000 m, not at " + metres + " m");
        }
        return metres;
    }
}
