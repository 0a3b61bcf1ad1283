package org.longsummer.science.cooling;

import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;
import org.longsummer.quantity.Temperature;

/** Against points that a second implementation worked out from the same published coefficients. */
class PublishedCurvesCrossCheckTest {
    /** Half the last digit given. */
    private static final double HALF_LAST_DIGIT = 5.1e-6;
    private static final Temperature ROOM = Temperature.celsius(26.7);

    @Test
    void windowUnit() {
        try (Comparison comparison = Comparison.absolute(getClass(), "window unit, capacity, energy input and power", "", "winkler-2013",
                HALF_LAST_DIGIT)) {
            for (ReferenceTable.Row row : ReferenceTable.read("cooling_curve_points").rows("machine", "window unit")) {
                Temperature wet = Temperature.fahrenheit(row.number("entering_wet_bulb_f"));
                Temperature out = Temperature.fahrenheit(row.number("outdoor_f"));
                String where = row.text("entering_wet_bulb_f") + " / " + row.text("outdoor_f") + " °F";
                comparison.point(where, WinklerEtAl2013.capacityRatio(wet, out), row.number("capacity_ratio"));
                comparison.point(where, WinklerEtAl2013.energyInputRatio(wet, out), row.number("energy_input_ratio"));
                comparison.point(where, WinklerEtAl2013.powerRatio(wet, out), row.number("power_ratio"));
            }
        }
    }

    @Test
    void faultsAtTheRatingPoint() {
        for (String fit : new String[] {"cheung-braun-2015", "domanski-2014"}) {
            try (Comparison comparison = Comparison.bands(getClass(), "faults at the rating point, change of capacity and power", fit)) {
                for (ReferenceTable.Row row : ReferenceTable.read("fault_magnitudes").rows("fit", fit)) {
                    double change = row.number("change_pct");
                    double half = row.number("half_last_digit") * 1.02;
                    comparison.band(row.text("fault") + " " + row.text("missing_pct") + " %, " + row.text("quantity"),
                            100 * (ratio(row) - 1), change - half, change + half);
                }
            }
        }
    }

    private static double ratio(ReferenceTable.Row row) {
        double share = row.number("missing_pct") / 100;
        boolean power = row.text("quantity").equals("power");
        if (row.text("fit").equals("domanski-2014")) {
            return power ? DomanskiEtAl2014.powerRatio(share, ROOM, RatingPoint.OUTDOOR)
                    : DomanskiEtAl2014.capacityRatio(share, ROOM, RatingPoint.OUTDOOR);
        }
        CheungBraun2015 fault = CheungBraun2015.valueOf(row.text("fault"));
        return power ? fault.powerRatio(share, RatingPoint.RETURN_WET_BULB, RatingPoint.OUTDOOR)
                : fault.capacityRatio(share, RatingPoint.RETURN_WET_BULB, RatingPoint.OUTDOOR);
    }
}
