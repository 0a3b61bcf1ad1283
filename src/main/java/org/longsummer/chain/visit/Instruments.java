package org.longsummer.chain.visit;

import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.Voltage;

/**
 * Standard uncertainties (k = 1) of the instruments used at a visit.
 *
 * @param probe thermometer for return and supply air
 * @param ambientProbe thermometer for outdoor air
 * @param humidity humidity probe
 * @param clampRelative clamp meter, share of the reading
 * @param clampFloor clamp meter, fixed part
 * @param voltage voltmeter
 * @param oneProbe one thermometer read both return and supply, so its own error largely cancels in the split
 */
public record Instruments(TemperatureDifference probe, TemperatureDifference ambientProbe, RelativeHumidity humidity,
        double clampRelative, Current clampFloor, Voltage voltage, boolean oneProbe) {

    /**
     * Defaults. Thermometer ±(0.1 % + 1.3 °F) rectangular (California RA3.2.2.2); clamp ±2 % rectangular of the reading; humidity
     * ±3 % RH grade widened for field use; voltmeter ±1 %. See {@code reference/sources.md}.
     */
    public static final Instruments DEFAULT = new Instruments(TemperatureDifference.fahrenheit(0.75),
            TemperatureDifference.fahrenheit(1.0), RelativeHumidity.percent(3.8), 0.012, new Current(0.06), new Voltage(1.0), false);
}
