package org.longsummer.science.cooling;

import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;

/**
 * The conditions at which room air conditioners are rated: 80/67 °F indoors, 95 °F outdoors, sea level (AHRI 210/240; 10 CFR 430
 * subpart B appendix F).
 */
public final class RatingPoint {
    public static final Temperature OUTDOOR = Temperature.fahrenheit(95);
    public static final Temperature RETURN_DRY_BULB = Temperature.fahrenheit(80);
    public static final Temperature RETURN_WET_BULB = Temperature.fahrenheit(67);
    public static final MoistAir RETURN_AIR =
            MoistAir.ofWetBulb(RETURN_DRY_BULB, RETURN_WET_BULB, StandardAtmosphere.pressure(Altitude.SEA_LEVEL));

    private RatingPoint() {}
}
