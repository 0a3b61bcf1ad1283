package org.longsummer.measured;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.evidence.ReferenceTable;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.Voltage;

/**
 * A measured machine as a technician would have met it: a 13,500 Btu/h unit at 115 V. Watts become amps at a power factor of 0.96, by
 * one factor for the machine, so that it draws 12 A at 95 °F by its own measured slope.
 */
final class MeasuredUnit {
    private static final double VOLTS = 115;
    private static final double POWER_FACTOR = 0.96;
    private static final double AMPS_AT_95 = 12;
    private static final ZoneOffset OFFSET = ZoneOffset.ofHours(-5);

    private final String name;
    private final List<ReferenceTable.Row> rows;
    private final Function<ReferenceTable.Row, Moisture> moisture;
    private final Function<ReferenceTable.Row, Double> watts;
    private final double ampsPerWatt;

    /** @param watts of compressor and fans */
    MeasuredUnit(String name, List<ReferenceTable.Row> rows, Function<ReferenceTable.Row, Moisture> moisture,
            Function<ReferenceTable.Row, Double> watts) {
        this.name = name;
        this.rows = rows;
        this.moisture = moisture;
        this.watts = watts;
        this.ampsPerWatt = 1 / (VOLTS * POWER_FACTOR);
    }

    String name() {
        return name;
    }

    List<ReferenceTable.Row> rows() {
        return rows;
    }

    double watts(ReferenceTable.Row row) {
        return watts.apply(row);
    }

    /** One factor that makes the machine draw 12 A at 95 °F by the slope of ln watts with outdoor air over the given rows. */
    private double factor(List<ReferenceTable.Row> clean) {
        List<double[]> inputs = new ArrayList<>();
        List<Double> lnWatts = new ArrayList<>();
        for (ReferenceTable.Row row : clean) {
            inputs.add(new double[] {1, row.number("ambient_db_f") - 95});
            lnWatts.add(Math.log(watts(row)));
        }
        return AMPS_AT_95 / (Math.exp(LeastSquares.fit(inputs, lnWatts)[0]) * ampsPerWatt);
    }

    /** Visits, one a row; the factor is set by the rows that are clean. */
    List<Visit> visits(List<ReferenceTable.Row> clean, Function<ReferenceTable.Row, LocalDateTime> at) {
        double factor = factor(clean);
        List<Visit> visits = new ArrayList<>();
        for (ReferenceTable.Row row : rows) {
            visits.add(visit(name + "-" + (1000 + visits.size()), row, at.apply(row).toInstant(OFFSET), factor));
        }
        return visits;
    }

    private Visit visit(String id, ReferenceTable.Row row, Instant at, double factor) {
        ReadingsBuilder readings = new ReadingsBuilder().returnDryBulb(fahrenheit(row, "return_db_f")).returnMoisture(moisture.apply(row))
                .supplyDryBulb(fahrenheit(row, "supply_db_f")).supplyAt(SupplyAt.DISCHARGE)
                .ambientDryBulb(fahrenheit(row, "ambient_db_f")).ambientAt(AmbientAt.INLET)
                .amps(new Current(watts(row) * ampsPerWatt * factor)).volts(new Voltage(VOLTS)).runTime(new RunTime(15));
        return new Visit(id, name, at, OFFSET, "laboratory", Instruments.DEFAULT, readings.build(), FanSpeed.HIGH, PowerSource.SHORE,
                FilterLook.NOT_LOOKED, CoilLook.NOT_LOOKED, false, Set.of(), "");
    }

    static Temperature fahrenheit(ReferenceTable.Row row, String column) {
        return Temperature.fahrenheit(row.number(column));
    }

    Unit unit() {
        Plate plate = new Plate(Optional.of(CoolingCapacity.btuPerHour(13_500)), Optional.of("R-410A"), Optional.empty(), AmpsKind.UNKNOWN,
                Optional.of(new Voltage(VOLTS)), false, false, Optional.empty());
        return new Unit(name, name, "laboratory", plate, AirDelivery.NON_DUCTED, Optional.empty(), Altitude.SEA_LEVEL);
    }

    static List<Verdict> judge(Map<String, Unit> units, List<Visit> visits) {
        List<Verdict> verdicts = new ArrayList<>();
        Assessment.ofFleet(units, visits, verdicts::add);
        return verdicts;
    }

    /** Measured minus expected split, °F. */
    static double splitResidual(Verdict verdict) {
        return verdict.visit().readings().split().orElseThrow().fahrenheit()
                - verdict.departure().expectedSplit().orElseThrow().value().fahrenheit();
    }

    /** Measured over expected amps, less one. */
    static double ampsResidual(Verdict verdict) {
        return verdict.visit().readings().amps().orElseThrow().amperes()
                / verdict.departure().expectedAmps().orElseThrow().value().amperes() - 1;
    }
}
