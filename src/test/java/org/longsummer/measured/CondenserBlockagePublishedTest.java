package org.longsummer.measured;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.science.cooling.RatingPoint;
import org.longsummer.science.cooling.RoofUnit;

/**
 * A packaged rooftop unit on a clean day and on a day with 28 % of its condenser's face covered. The covered day came five days before
 * the clean one; here it is dated twenty days after it, so that the clean unit is known first.
 */
class CondenserBlockagePublishedTest {
    private static final LocalDate CLEAN_DAY = LocalDate.of(2017, 9, 1);
    private static final int DAYS_AFTER = 20;
    private static final int LEARNED = 5;
    private static List<Verdict> clean;
    private static List<Verdict> covered;
    private static MeasuredUnit unit;

    @BeforeAll
    static void judge() {
        List<ReferenceTable.Row> rows = ReferenceTable.read("condenser_blockage_2019").rows();
        unit = new MeasuredUnit("rooftop unit", rows, row -> new Moisture.Relative(RelativeHumidity.percent(row.number("return_rh_pct"))),
                row -> row.number("compressor_w") + row.number("condenser_fan_w") + row.number("blower_w"));
        List<Verdict> all = MeasuredUnit.judge(Map.of(unit.name(), unit.unit()), unit.visits(cleanRows(),
                CondenserBlockagePublishedTest::dated));
        clean = all.stream().filter(v -> v.visit().localDay().equals(CLEAN_DAY)).toList();
        covered = all.stream().filter(v -> !v.visit().localDay().equals(CLEAN_DAY)).toList();
    }

    private static List<ReferenceTable.Row> cleanRows() {
        return unit.rows().stream().filter(CondenserBlockagePublishedTest::isClean).toList();
    }

    private static boolean isClean(ReferenceTable.Row row) {
        return row.text("set").startsWith("clean");
    }

    private static LocalDateTime dated(ReferenceTable.Row row) {
        String[] time = row.text("at").split(" ")[1].split(":");
        return CLEAN_DAY.plusDays(isClean(row) ? 0 : DAYS_AFTER).atTime(Integer.parseInt(time[0]), Integer.parseInt(time[1]));
    }

    @Test
    void theCleanDayIsSteady() {
        assertEquals(18, clean.size());
        clean.forEach(v -> assertEquals(State.STEADY, v.state(), v.visit().id()));
    }

    /** Its effect is 2 to 5 % of the watts: no act is owed. */
    @Test
    void theCoveredDayDrawsMoreAndPointsToTheCondenser() {
        assertEquals(4, covered.size());
        double before = clean.stream().skip(LEARNED).mapToDouble(MeasuredUnit::ampsResidual).average().orElseThrow();
        double first = MeasuredUnit.ampsResidual(covered.get(0));
        double mean = covered.stream().mapToDouble(MeasuredUnit::ampsResidual).average().orElseThrow();
        assertTrue(first > before + 0.015, "amps departure of the first covered reading: " + first + " after " + before);
        assertTrue(mean > before, "amps departure of the covered day: " + mean + " after " + before);
        covered.forEach(v -> assertEquals(Condition.CONDENSER_FOULING, v.probabilities().likeliestFault(), v.visit().id()));
        covered.forEach(v -> assertNotEquals(State.RETAKE, v.state(), v.visit().id()));
    }

    @Test
    void theCoveredDayRaisesTheCondensersProbability() {
        double before = clean.get(clean.size() - 1).probabilities().of(Condition.CONDENSER_FOULING);
        double after = covered.get(covered.size() - 1).probabilities().of(Condition.CONDENSER_FOULING);
        assertTrue(after > before, "probability of a dirty condenser: " + before + " then " + after);
    }

    /** Slope of total watts with outdoor air on the clean day, within a fifth: a self-contained machine like a roof unit. */
    @Test
    void slopeOfTheWatts() {
        List<double[]> outdoor = new ArrayList<>();
        List<Double> measured = new ArrayList<>();
        List<Double> our = new ArrayList<>();
        for (ReferenceTable.Row row : cleanRows()) {
            outdoor.add(new double[] {1, row.number("ambient_db_f") - 71});
            measured.add(Math.log(unit.watts(row)));
            our.add(Math.log(new RoofUnit(RatingPoint.RETURN_AIR, MeasuredUnit.fahrenheit(row, "ambient_db_f")).sound().powerRatio()));
        }
        try (Comparison comparison = Comparison.relative(getClass(), "watts with outdoor air, slope", "condenser-blockage-2019", 0.2)) {
            comparison.point("clean day", LeastSquares.fit(outdoor, our)[1], LeastSquares.fit(outdoor, measured)[1]);
        }
    }
}
