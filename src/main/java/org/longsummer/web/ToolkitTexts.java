package org.longsummer.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.longsummer.chain.visit.InstrumentKind;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;
import org.longsummer.store.Toolkit;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Shown;

/** A technician's instruments as the boxes of their form: a limit stands only where it is not that of the kind. */
final class ToolkitTexts {
    private static final double ROOT_THREE = Math.sqrt(3);
    private static final double SAME = 1e-9;

    private ToolkitTexts() {}

    static Map<String, String> of(Toolkit toolkit, UnitSystem system) {
        Instruments u = toolkit.instruments();
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("name", toolkit.technician());
        boxes.put("thermometer", Boxes.word(toolkit.thermometer()));
        boxes.put("ambient_thermometer", Boxes.word(toolkit.ambientThermometer()));
        boxes.put("hygrometer", Boxes.word(toolkit.hygrometer()));
        boxes.put("clamp", Boxes.word(toolkit.clamp()));
        boxes.put("voltmeter", Boxes.word(toolkit.voltmeter()));
        String ending = system == UnitSystem.US ? "_f" : "_c";
        put(boxes, "thermometer_limit" + ending, number(u.probe(), system), number(toolkit.thermometer().thermometer(), system));
        put(boxes, "ambient_thermometer_limit" + ending, number(own(u.ambientProbe()), system),
                number(toolkit.ambientThermometer().thermometer(), system));
        put(boxes, "hygrometer_limit", u.humidity().percent(), toolkit.hygrometer().hygrometer().percent());
        put(boxes, "clamp_limit", 100 * u.clampRelative(), 100 * toolkit.clamp().clampRelative());
        put(boxes, "voltmeter_limit", u.voltage().volts(), toolkit.voltmeter().voltmeter().volts());
        return boxes;
    }

    /** Expanded uncertainties (k = 2) in one line. */
    static String line(Instruments u, UnitSystem system) {
        return "thermometer ±\u00a0" + difference(u.probe(), system) + (u.oneProbe() ? " (one for return and supply)" : "") + ", outdoors ±\u00a0"
                + difference(u.ambientProbe(), system) + ", humidity ±\u00a0" + Shown.uncertainty(RelativeHumidity.percent(2 * u.humidity().percent()),
                system).text() + ", clamp ±\u00a0" + clamp(u, 2) + ", volts ±\u00a0" + Shown.uncertainty(new Voltage(2 * u.voltage().volts()), system).text();
    }

    private static String difference(TemperatureDifference u, UnitSystem system) {
        return Shown.uncertainty(new TemperatureDifference(2 * u.kelvins()), system).text();
    }

    /** For example {@code 2.4 % and 0.12 A}. */
    static String clamp(Instruments u, double coverage) {
        return clamp(u.clampRelative(), u.clampFloor(), coverage);
    }

    static String clamp(double relative, Current floor, double coverage) {
        return Decimal.text(100 * coverage * relative, 1) + " % and " + new Current(coverage * floor.amperes()).text(UnitSystem.US);
    }

    /** The thermometer's own share of what is kept for outdoor air. */
    private static TemperatureDifference own(TemperatureDifference outdoors) {
        double place = InstrumentKind.outdoors(new TemperatureDifference(0)).kelvins();
        return new TemperatureDifference(Math.sqrt(Math.max(0, outdoors.kelvins() * outdoors.kelvins() - place * place)));
    }

    private static double number(TemperatureDifference difference, UnitSystem system) {
        return system == UnitSystem.US ? difference.fahrenheit() : difference.kelvins();
    }

    private static void put(Map<String, String> boxes, String box, double used, double usual) {
        boolean usualOne = Math.abs(used - usual) < SAME;
        boxes.put(box, usualOne ? "" : Decimal.text(used * ROOT_THREE, 2).replaceAll("0+$", "").replaceAll("\\.$", ""));
    }
}
