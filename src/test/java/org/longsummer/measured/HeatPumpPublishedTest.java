package org.longsummer.measured;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Pressure;
import org.longsummer.science.cooling.RoofUnit;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;

/** A fault-free heat pump in environmental chambers, 120 readings of two sites and two stages, taken as four sound units. */
class HeatPumpPublishedTest {
    private static final String SOURCE = "heat-pump-2301-13412";
    private static final int LEARNED = 5;
    private static final double MOST_DRIFTING = 0.03;

    private static List<MeasuredUnit> units() {
        Map<String, List<ReferenceTable.Row>> rows = new TreeMap<>();
        ReferenceTable.read("heat_pump_2301_13412").rows()
                .forEach(row -> rows.computeIfAbsent(row.text("site") + " " + row.text("stage"), key -> new ArrayList<>()).add(row));
        List<MeasuredUnit> units = new ArrayList<>();
        rows.forEach((name, some) -> units.add(new MeasuredUnit(name, some,
                row -> new Moisture.DewPoint(MeasuredUnit.fahrenheit(row, "return_dew_point_f")),
                row -> row.number("indoor_w") + row.number("outdoor_w"))));
        assertEquals(4, units.size());
        return units;
    }

    /**
     * The data give no year, and several runs repeat one simulated day. So three ways to date them: the day and hour of the simulated
     * weather, many readings a day; or the order of the file, one reading a day or every third day.
     *
     * @param daysBetween 0 for the simulated weather's own days
     */
    private static Map<String, List<Verdict>> judged(int daysBetween) {
        Map<String, Unit> fleet = new TreeMap<>();
        List<Visit> visits = new ArrayList<>();
        for (MeasuredUnit unit : units()) {
            fleet.put(unit.name(), unit.unit());
            int[] count = {0};
            visits.addAll(unit.visits(unit.rows(), row -> {
                String[] at = row.text("at").split(" ");
                LocalDate own = LocalDate.of(2023, Integer.parseInt(at[0].substring(0, 2)), Integer.parseInt(at[0].substring(3)));
                LocalDate day = daysBetween == 0 ? own : LocalDate.of(2023, 5, 15).plusDays((long) daysBetween * count[0]++);
                return LocalDateTime.of(day, LocalTime.parse(at[1]));
            }));
        }
        Map<String, List<Verdict>> verdicts = new TreeMap<>();
        MeasuredUnit.judge(fleet, visits).forEach(v -> verdicts.computeIfAbsent(v.visit().unitId(), id -> new ArrayList<>()).add(v));
        return verdicts;
    }

    @Test
    void soundMachinesAreLeftInPeace() {
        for (int daysBetween : new int[] {0, 1, 3}) {
            List<Verdict> all = judged(daysBetween).values().stream().flatMap(List::stream).toList();
            assertEquals(120, all.size());
            long acts = all.stream().filter(v -> v.state() == State.ACT).count();
            long drifting = all.stream().filter(v -> v.state() == State.DRIFTING).count();
            assertEquals(0, acts, "acts, " + daysBetween + " days between");
            assertTrue(drifting <= MOST_DRIFTING * all.size(), "drifting: " + drifting + ", " + daysBetween + " days between");
        }
    }

    /** From the sixth visit on, all four together: at most 0.6 °F and 3.5 % about the expectation. */
    @Test
    void theExpectationHasLearnedThemByTheSixthVisit() {
        try (Comparison split = Comparison.absolute(getClass(), "split about the expectation from the sixth visit on, rms", "°F", SOURCE, 0.6);
                Comparison amps = Comparison.absolute(getClass(), "amps about the expectation from the sixth visit on, rms", "%", SOURCE, 3.5)) {
            for (int daysBetween : new int[] {0, 1, 3}) {
                List<Verdict> later = judged(daysBetween).values().stream().flatMap(list -> list.stream().skip(LEARNED)).toList();
                double splits = 0;
                double currents = 0;
                for (Verdict verdict : later) {
                    splits += Math.pow(MeasuredUnit.splitResidual(verdict), 2) / later.size();
                    currents += Math.pow(MeasuredUnit.ampsResidual(verdict), 2) / later.size();
                }
                split.point(daysBetween + " days between", Math.sqrt(splits), 0);
                amps.point(daysBetween + " days between", 100 * Math.sqrt(currents), 0);
            }
        }
    }

    /**
     * Slopes of the bare class, before anything is learned, over those measured. The window unit's published curves are flatter than this
     * heat pump: bands half as steep (outdoor air) or two thirds as steep (dew point, return air) to a tenth steeper; the rest is model
     * uncertainty and learned slopes.
     */
    @Test
    void slopesOfTheBareClass() {
        try (Comparison comparison = Comparison.bands(getClass(), "slopes with outdoor air, dew point and return air over measured", SOURCE)) {
            for (MeasuredUnit unit : units()) {
                List<double[]> conditions = new ArrayList<>();
                List<Double> lnWatts = new ArrayList<>();
                List<Double> ourLnWatts = new ArrayList<>();
                List<Double> splits = new ArrayList<>();
                List<Double> ourSplits = new ArrayList<>();
                for (ReferenceTable.Row row : unit.rows()) {
                    conditions.add(new double[] {1, row.number("ambient_db_f") - 85, row.number("return_dew_point_f") - 55,
                        row.number("return_db_f") - 79});
                    lnWatts.add(Math.log(unit.watts(row)));
                    splits.add(row.number("return_db_f") - row.number("supply_db_f"));
                    RoofUnit.Response ours = response(row);
                    ourLnWatts.add(Math.log(ours.powerRatio()));
                    ourSplits.add(ours.split().fahrenheit());
                }
                double[] measured = LeastSquares.fit(conditions, splits);
                double[] our = LeastSquares.fit(conditions, ourSplits);
                comparison.band(unit.name() + ", watts with outdoor air",
                        LeastSquares.fit(conditions, ourLnWatts)[1] / LeastSquares.fit(conditions, lnWatts)[1], 0.5, 1.1);
                comparison.band(unit.name() + ", split with outdoor air", our[1] / measured[1], 0.5, 1.1);
                comparison.band(unit.name() + ", split with dew point", our[2] / measured[2], 0.65, 1.1);
                comparison.band(unit.name() + ", split with return air", our[3] / measured[3], 0.6, 1.1);
            }
        }
    }

    private static RoofUnit.Response response(ReferenceTable.Row row) {
        Pressure pressure = StandardAtmosphere.pressure(Altitude.SEA_LEVEL);
        MoistAir air = MoistAir.ofDewPoint(MeasuredUnit.fahrenheit(row, "return_db_f"), MeasuredUnit.fahrenheit(row, "return_dew_point_f"),
                pressure);
        return new RoofUnit(air, MeasuredUnit.fahrenheit(row, "ambient_db_f")).sound();
    }
}
