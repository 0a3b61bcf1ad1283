package org.longsummer.science.cooling;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;
import org.longsummer.quantity.Temperature;

/** The curves, written out again from the coefficients of the table, over the whole published range: what differs is mistyped. */
class PublishedCurvesPublishedTest {
    private static final double ROUNDING = 1e-12;
    private static final double RATED_COP = 3.74;

    private interface Conditions {
        void at(double wetBulb, double outdoor);
    }

    /** 13 to 24 °C wet bulb, 18 to 46 °C outdoors. */
    private static void everywhere(Conditions conditions) {
        for (double wetBulb = 13; wetBulb <= 23.5; wetBulb += 1.5) {
            for (double outdoor = 18.5; outdoor <= 46; outdoor += 2.5) {
                conditions.at(wetBulb, outdoor);
            }
        }
    }

    private static double[] numbers(ReferenceTable.Row row, String... columns) {
        double[] numbers = new double[columns.length];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = row.number(columns[i]);
        }
        return numbers;
    }

    @Test
    void windowUnit() {
        for (ReferenceTable.Row row : ReferenceTable.read("winkler2013_coefficients").rows()) {
            double[] c = numbers(row, "c1", "c2", "c3", "c4", "c5", "c6");
            boolean capacity = row.text("curve").equals("capacity");
            try (Comparison comparison = Comparison.relative(getClass(), "window unit, " + row.text("curve").replace('_', ' '),
                    "winkler-2013", ROUNDING)) {
                everywhere((wetBulb, outdoor) -> {
                    Temperature wet = Temperature.celsius(wetBulb);
                    Temperature out = Temperature.celsius(outdoor);
                    double printed = c[0] + c[1] * wetBulb + c[2] * wetBulb * wetBulb + c[3] * outdoor + c[4] * outdoor * outdoor
                            + c[5] * wetBulb * outdoor;
                    comparison.point(wetBulb + " / " + outdoor + " °C", capacity ? WinklerEtAl2013.capacityRatio(wet, out)
                            : WinklerEtAl2013.energyInputRatio(wet, out), printed);
                });
            }
        }
    }

    @Test
    void faultImpactRatios() {
        for (CheungBraun2015 fault : CheungBraun2015.values()) {
            double[] capacity = faultCoefficients(fault, "capacity");
            double[] energyInput = faultCoefficients(fault, "energy_input_ratio");
            try (Comparison comparison = Comparison.relative(getClass(), "fault impact ratios, " + fault, "cheung-braun-2015", ROUNDING)) {
                for (double share : new double[] {0.02, 0.1, 0.2, fault.largest()}) {
                    everywhere((wetBulb, outdoor) -> {
                        Temperature wet = Temperature.celsius(wetBulb);
                        Temperature out = Temperature.celsius(outdoor);
                        double q = impact(capacity, share, wetBulb, outdoor);
                        String where = share + " at " + wetBulb + " / " + outdoor + " °C";
                        comparison.point(where, fault.capacityRatio(share, wet, out), q);
                        comparison.point(where, fault.powerRatio(share, wet, out), q * impact(energyInput, share, wetBulb, outdoor));
                    });
                }
            }
        }
    }

    private static double[] faultCoefficients(CheungBraun2015 fault, String quantity) {
        return numbers(ReferenceTable.read("cheung_braun2015_coefficients").rows("fault", fault.name()).stream()
                .filter(row -> row.text("quantity").equals(quantity) && row.number("largest") == fault.largest()).findFirst()
                .orElseThrow(), "c1", "c2", "c3", "c4", "c5", "c6");
    }

    private static double impact(double[] c, double share, double wetBulb, double outdoor) {
        return 1 + share * (c[0] + c[1] * (wetBulb / 273.15 + 1) + c[2] * (outdoor / 273.15 + 1) + c[3] * share + c[4] * share * share
                + c[5] * RATED_COP);
    }

    @Test
    void undercharge() {
        ReferenceTable table = ReferenceTable.read("domanski2014_coefficients");
        double[] capacity = numbers(table.rows("quantity", "capacity").get(0), "a1", "a2", "a3", "a4");
        double[] power = numbers(table.rows("quantity", "power").get(0), "a1", "a2", "a3", "a4");
        try (Comparison comparison = Comparison.relative(getClass(), "capacity and power against charge", "domanski-2014", ROUNDING)) {
            for (double share : new double[] {0, 0.1, 0.2, 0.3}) {
                everywhere((indoor, outdoor) -> {
                    double warm = indoor + 8;
                    ToDoubleFunction<double[]> printed = a -> 1 + (a[0] + a[1] * warm + a[2] * outdoor + a[3] * -share) * -share;
                    String where = share + " at " + warm + " / " + outdoor + " °C";
                    comparison.point(where, DomanskiEtAl2014.capacityRatio(share, Temperature.celsius(warm), Temperature.celsius(outdoor)),
                            printed.applyAsDouble(capacity));
                    comparison.point(where, DomanskiEtAl2014.powerRatio(share, Temperature.celsius(warm), Temperature.celsius(outdoor)),
                            printed.applyAsDouble(power));
                });
            }
        }
    }
}
