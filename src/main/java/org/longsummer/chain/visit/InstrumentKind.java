package org.longsummer.chain.visit;

import java.util.List;
import java.util.stream.Stream;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.Voltage;

/**
 * Kinds of instruments with the standard uncertainty (k = 1) that each usually has in the field. The first of each use is the default
 * of {@link Instruments#DEFAULT}; the others are common practice, after what makers print for such kinds, without a source of their
 * own. Whoever has the sheet of his own instrument gives its figure instead.
 */
public enum InstrumentKind {
    DIGITAL_THERMOMETER(Use.THERMOMETER, "digital thermometer with a probe", 0.75, 0),
    CALIBRATED_PROBE(Use.THERMOMETER, "thermistor or resistance probe, calibrated", 0.35, 0),
    KITCHEN_THERMOMETER(Use.THERMOMETER, "kitchen thermometer", 1.2, 0),
    INFRARED_THERMOMETER(Use.THERMOMETER, "infrared thermometer, which sees surfaces and not air", 2.3, 0),

    DIGITAL_HYGROMETER(Use.HYGROMETER, "digital hygrometer", 3.8, 0),
    CALIBRATED_HYGROMETER(Use.HYGROMETER, "humidity probe, calibrated", 2.0, 0),
    SLING_PSYCHROMETER(Use.HYGROMETER, "wet and dry bulb", 3.0, 0),
    DIAL_HYGROMETER(Use.HYGROMETER, "dial or room hygrometer", 7.0, 0),

    CLAMP_METER(Use.CLAMP, "clamp meter, true RMS", 1.2, 0.06),
    AVERAGING_CLAMP(Use.CLAMP, "clamp meter, averaging or unknown", 2.0, 0.10),
    PLUG_IN_POWER_METER(Use.CLAMP, "plug-in power meter", 0.8, 0.05),

    MULTIMETER(Use.VOLTMETER, "multimeter", 1.0, 0),
    PLUG_IN_VOLTMETER(Use.VOLTMETER, "plug-in voltmeter or panel display", 2.0, 0);

    /** What an instrument is used for. */
    public enum Use { THERMOMETER, HYGROMETER, CLAMP, VOLTMETER }

    /** Where outdoor air is read adds this to the thermometer's own, so that the default thermometer gives the default 1.0 °F. */
    private static final double AMBIENT_PLACE_F = 0.6614;

    private final Use use;
    private final String phrase;
    private final double standard;
    private final double floor;

    InstrumentKind(Use use, String phrase, double standard, double floor) {
        this.use = use;
        this.phrase = phrase;
        this.standard = standard;
        this.floor = floor;
    }

    public Use use() {
        return use;
    }

    /** The words on a screen. */
    public String phrase() {
        return phrase;
    }

    /** The kinds for one use, the default first. */
    public static List<InstrumentKind> of(Use use) {
        return Stream.of(values()).filter(kind -> kind.use == use).toList();
    }

    /** Standard uncertainty of a thermometer of this kind. */
    public TemperatureDifference thermometer() {
        return TemperatureDifference.fahrenheit(standard);
    }

    /** Standard uncertainty of outdoor air read with a thermometer: its own and that of the place. */
    public static TemperatureDifference outdoors(TemperatureDifference thermometer) {
        double own = thermometer.fahrenheit();
        return TemperatureDifference.fahrenheit(Math.sqrt(own * own + AMBIENT_PLACE_F * AMBIENT_PLACE_F));
    }

    /** Standard uncertainty of a hygrometer of this kind. */
    public RelativeHumidity hygrometer() {
        return RelativeHumidity.percent(standard);
    }

    /** Standard uncertainty of a clamp of this kind: the share of the reading. */
    public double clampRelative() {
        return standard / 100;
    }

    /** Standard uncertainty of a clamp of this kind: the fixed part. */
    public Current clampFloor() {
        return new Current(floor);
    }

    /** Standard uncertainty of a voltmeter of this kind. */
    public Voltage voltmeter() {
        return new Voltage(standard);
    }
}
