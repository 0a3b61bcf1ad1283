package org.longsummer.science.moistair;

import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;

/**
 * Against [psychrolib-2019], a second implementation of the same relations. Its solvers stop within 0.001 °C; everything else is
 * allowed half of its last printed digit.
 */
class MoistAirCrossCheckTest {
    private static final String SOURCE = "psychrolib-2019";

    @Test
    void sixtyEightStates() {
        try (Comparison pressure = Comparison.absolute(getClass(), "pressure at an altitude", "Pa", SOURCE, 0.05001);
                Comparison ratio = Comparison.absolute(getClass(), "humidity ratio", "kg/kg", SOURCE, 5.001e-8);
                Comparison humidity = Comparison.absolute(getClass(), "relative humidity", "% RH", SOURCE, 0.0005001);
                Comparison enthalpy = Comparison.absolute(getClass(), "enthalpy", "kJ/kg", SOURCE, 5.001e-5);
                Comparison volume = Comparison.absolute(getClass(), "specific volume", "m³/kg", SOURCE, 5.001e-6);
                Comparison wetBulb = Comparison.absolute(getClass(), "wet bulb", "K", SOURCE, 0.0015);
                Comparison dewPoint = Comparison.absolute(getClass(), "dew point", "K", SOURCE, 0.0015)) {
            for (ReferenceTable.Row row : ReferenceTable.read("psychrolib_states").rows()) {
                MoistAir air = state(row);
                String where = row.text("label") + " " + row.text("dry_bulb_f");
                pressure.point(where, air.pressure().pascals(), row.number("pressure_pa"));
                ratio.point(where, air.humidityRatio(), row.number("humidity_ratio"));
                humidity.point(where, air.relativeHumidity().percent(), row.number("relative_humidity_pct"));
                enthalpy.point(where, air.enthalpy() / 1000, row.number("enthalpy_kj_per_kg"));
                volume.point(where, air.specificVolume(), row.number("volume_m3_per_kg"));
                wetBulb.point(where, air.wetBulb().celsius(), row.number("wet_bulb_c"));
                dewPoint.point(where, air.dewPoint().celsius(), row.number("dew_point_c"));
            }
        }
    }

    private static MoistAir state(ReferenceTable.Row row) {
        Temperature dryBulb = Temperature.fahrenheit(row.number("dry_bulb_f"));
        var pressure = StandardAtmosphere.pressure(Altitude.feet(row.number("altitude_ft")));
        double input = row.number("input_value");
        return row.text("input").equals("wet_bulb_f") ? MoistAir.ofWetBulb(dryBulb, Temperature.fahrenheit(input), pressure)
                : MoistAir.of(dryBulb, RelativeHumidity.percent(input), pressure);
    }
}
