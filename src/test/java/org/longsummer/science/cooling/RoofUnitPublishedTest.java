package org.longsummer.science.cooling;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;

/** The roof unit's behaviour against other published machines: a roof unit of its own has no published curves. */
class RoofUnitPublishedTest {
    private static final String CHART = "target_air_drop_507994_01";
    private static final int DRIEST = 57;
    private static final int MOST_HUMID = 70;
    /** The chart's own tolerance, °F. */
    private static final double CHART_TOLERANCE = 3;

    private static double split(double dryBulb, double wetBulb) {
        MoistAir air = MoistAir.ofWetBulb(Temperature.fahrenheit(dryBulb), Temperature.fahrenheit(wetBulb),
                StandardAtmosphere.pressure(Altitude.SEA_LEVEL));
        return new RoofUnit(air, RatingPoint.OUTDOOR).sound().split().fahrenheit();
    }

    /** Another maker's ducted split system with another air flow: the mean difference is the level, the rest is the shape. */
    @Test
    void shapeOfTheTargetAirDrop() {
        List<double[]> points = new ArrayList<>();
        double mean = 0;
        for (ReferenceTable.Row row : ReferenceTable.read(CHART).rows()) {
            for (int wetBulb = DRIEST; wetBulb <= MOST_HUMID; wetBulb++) {
                double dryBulb = row.number("entering_dry_bulb_f");
                if (wetBulb < dryBulb) {
                    points.add(new double[] {dryBulb, wetBulb, split(dryBulb, wetBulb), row.number("wb" + wetBulb)});
                }
            }
        }
        for (double[] point : points) {
            mean += (point[2] - point[3]) / points.size();
        }
        try (Comparison comparison = Comparison.absolute(getClass(), "target air drop, shape (level taken out)", "°F",
                "instructions-507994-01", CHART_TOLERANCE)) {
            for (double[] point : points) {
                comparison.point(point[0] + " / " + point[1] + " °F", point[2] - mean, point[3]);
            }
        }
    }

    /**
     * Slopes of the wet coil, °F per °F: the chart falls by 1.0 to 1.2 per degree of wet bulb and rises by 0.6 to 0.9 per degree of
     * dry bulb (from 72 °F up: below, it repeats itself); all published machines together give 0.8 (wet bulb). Band: half as steep to
     * one and a half times as steep.
     */
    @Test
    void slopesOfTheTargetAirDrop() {
        List<ReferenceTable.Row> rows = ReferenceTable.read(CHART).rows();
        ReferenceTable.Row warm = rows.get(0);
        ReferenceTable.Row cool = ReferenceTable.read(CHART).rows("entering_dry_bulb_f", "72").get(0);
        try (Comparison comparison = Comparison.bands(getClass(), "target air drop, slopes of a wet coil", "instructions-507994-01")) {
            for (ReferenceTable.Row row : rows) {
                double dryBulb = row.number("entering_dry_bulb_f");
                double chart = (row.number("wb69") - row.number("wb64")) / 5;
                if (dryBulb >= 72) {
                    comparison.band("wet bulb at " + dryBulb + " °F", (split(dryBulb, 69) - split(dryBulb, 64)) / 5, 1.5 * chart, 0.5 * chart);
                }
            }
            for (int wetBulb = 64; wetBulb <= 69; wetBulb++) {
                double chart = (warm.number("wb" + wetBulb) - cool.number("wb" + wetBulb)) / 8;
                comparison.band("dry bulb at " + wetBulb + " °F", (split(80, wetBulb) - split(72, wetBulb)) / 8, 0.5 * chart, 1.5 * chart);
            }
        }
    }

    /** Power and capacity with outdoor air at 67 °F wet bulb lie within what five published machines do, to half a percent. */
    @Test
    void withinThePublishedMachines() {
        try (Comparison power = Comparison.bands(getClass(), "power with outdoor air, within five machines", "energyplus-dx");
                Comparison capacity = Comparison.bands(getClass(), "capacity with outdoor air, within five machines", "energyplus-dx")) {
            for (int outdoor : new int[] {75, 82, 105, 115}) {
                RoofUnit unit = new RoofUnit(RatingPoint.RETURN_AIR, Temperature.fahrenheit(outdoor));
                double[] powers = range("power_ratio", outdoor);
                double[] capacities = range("capacity_ratio", outdoor);
                power.band(outdoor + " °F", unit.sound().powerRatio(), powers[0], powers[1]);
                capacity.band(outdoor + " °F", unit.sound().capacityRatio(), capacities[0], capacities[1]);
            }
        }
    }

    private static double[] range(String column, int outdoor) {
        List<ReferenceTable.Row> rows = ReferenceTable.read("cooling_curve_points").rows("entering_wet_bulb_f", "67");
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (ReferenceTable.Row row : rows) {
            if (row.number("outdoor_f") == outdoor) {
                double rated = rows.stream().filter(r -> r.text("machine").equals(row.text("machine")) && r.number("outdoor_f") == 95)
                        .findFirst().orElseThrow().number(column);
                low = Math.min(low, row.number(column) / rated - 0.005);
                high = Math.max(high, row.number(column) / rated + 0.005);
            }
        }
        return new double[] {low, high};
    }

    /** Capacity of a wet coil with seven tenths of its air: between the window unit's and the fault tests' own curves. */
    @Test
    void capacityWithLessAir() {
        try (Comparison comparison = Comparison.bands(getClass(), "capacity with 70 % of the air", "cheung-braun-2015")) {
            double sound = new RoofUnit(RatingPoint.RETURN_AIR, RatingPoint.OUTDOOR).sound().capacityRatio();
            double starved = new RoofUnit(RatingPoint.RETURN_AIR, RatingPoint.OUTDOOR).respond(new Alteration(0, 0.7, 1, 1)).capacityRatio();
            double faultTests = CheungBraun2015.EVAPORATOR_FLOW.capacityRatio(0.3, RatingPoint.RETURN_WET_BULB, RatingPoint.OUTDOOR);
            double windowUnit = (0.887 + 0.1128 * 0.7) / (0.887 + 0.1128);
            comparison.band("rating point", starved / sound, faultTests, windowUnit);
        }
    }
}
