package org.longsummer.science.cooling;

import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;

/** Against a second implementation of the same plan: curve, coil, calibration at 20 °F. */
class RoofUnitCrossCheckTest {
    /** The second implementation's moist air, dry coil and air flow differ in detail: 0.2 °F at both ends of the humidity. */
    private static final double SPLIT = 0.2;
    private static final double HALF_LAST_DIGIT = 0.00051;

    @Test
    void splitWithHumidity() {
        try (Comparison comparison = Comparison.absolute(getClass(), "split with return humidity", "°F", "roof-unit-second", SPLIT)) {
            for (ReferenceTable.Row row : ReferenceTable.read("roof_unit_second_implementation").rows("quantity", "split_f")) {
                MoistAir air = MoistAir.of(RatingPoint.RETURN_DRY_BULB, RelativeHumidity.percent(row.number("at")),
                        StandardAtmosphere.pressure(Altitude.SEA_LEVEL));
                comparison.point(row.text("at") + " %", new RoofUnit(air, RatingPoint.OUTDOOR).sound().split().fahrenheit(), row.number("value"));
            }
        }
    }

    @Test
    void ampsWithOutdoorAir() {
        try (Comparison comparison = Comparison.absolute(getClass(), "amps with outdoor air, over those at 95 °F", "", "roof-unit-second",
                HALF_LAST_DIGIT)) {
            for (ReferenceTable.Row row : ReferenceTable.read("roof_unit_second_implementation").rows("quantity", "amps_ratio")) {
                RoofUnit unit = new RoofUnit(RatingPoint.RETURN_AIR, Temperature.fahrenheit(row.number("at")));
                comparison.point(row.text("at") + " °F", unit.sound().powerRatio(), row.number("value"));
            }
        }
    }
}
