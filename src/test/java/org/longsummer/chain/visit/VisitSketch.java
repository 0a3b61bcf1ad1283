package org.longsummer.chain.visit;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.chain.expectation.Expecter;
import org.longsummer.chain.expectation.UsualVolts;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.screening.Screener;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.Voltage;

/**
 * An invented visit for tests, with a usual day's readings unless told otherwise. What is set to {@link Double#NaN} is not read.
 * Temperatures in °F.
 */
public final class VisitSketch {
    public static final double NOT_READ = Double.NaN;
    private static final ZoneOffset OFFSET = ZoneOffset.ofHours(-6);

    private LocalDateTime at = LocalDateTime.of(2024, 6, 3, 14, 0);
    private String technician = "Ada";
    private double returnF = 77;
    private double humidity = 50;
    private double ambientF = 92;
    private double volts = 115;
    private double minutes = 20;
    private double split = 20;
    private double amps = 11.7;
    private double roomF = NOT_READ;
    private double leavingF = NOT_READ;
    private double fanOnly = NOT_READ;
    private double microfarads = NOT_READ;
    private AmbientAt ambientAt = AmbientAt.INLET;
    private FilterLook filter = FilterLook.NOT_LOOKED;
    private CoilLook coil = CoilLook.NOT_LOOKED;
    private boolean iced;
    private Instruments instruments = Instruments.DEFAULT;
    private final Set<Work> work = EnumSet.noneOf(Work.class);

    /** A non-ducted 13,500 Btu/h unit, R-410A, its plate's amps not read. */
    public static Unit unit(String id) {
        return new Unit(id, id, "Alder Yard", new Plate(Optional.of(CoolingCapacity.btuPerHour(13_500)), Optional.of("R-410A"),
                Optional.empty(), AmpsKind.UNKNOWN, Optional.of(new Voltage(115)), false, false, Optional.empty()),
                AirDelivery.NON_DUCTED, Optional.empty(), Altitude.SEA_LEVEL);
    }

    public VisitSketch at(LocalDateTime value) {
        at = value;
        return this;
    }

    public VisitSketch by(String value) {
        technician = value;
        return this;
    }

    public VisitSketch returnAir(double dryBulbF, double relativeHumidityPercent) {
        returnF = dryBulbF;
        humidity = relativeHumidityPercent;
        return this;
    }

    public VisitSketch ambient(double dryBulbF) {
        ambientF = dryBulbF;
        return this;
    }

    public VisitSketch ambientAt(AmbientAt value) {
        ambientAt = value;
        return this;
    }

    public VisitSketch volts(double value) {
        volts = value;
        return this;
    }

    public VisitSketch minutes(double value) {
        minutes = value;
        return this;
    }

    public VisitSketch split(double value) {
        split = value;
        return this;
    }

    public VisitSketch amps(double value) {
        amps = value;
        return this;
    }

    public VisitSketch room(double dryBulbF) {
        roomF = dryBulbF;
        return this;
    }

    public VisitSketch condenserLeaving(double dryBulbF) {
        leavingF = dryBulbF;
        return this;
    }

    public VisitSketch fanOnly(double value) {
        fanOnly = value;
        return this;
    }

    public VisitSketch capacitor(double value) {
        microfarads = value;
        return this;
    }

    public VisitSketch filter(FilterLook value) {
        filter = value;
        return this;
    }

    public VisitSketch coil(CoilLook value) {
        coil = value;
        return this;
    }

    public VisitSketch iced() {
        iced = true;
        return this;
    }

    public VisitSketch instruments(Instruments value) {
        instruments = value;
        return this;
    }

    public VisitSketch then(Work... done) {
        work.addAll(Set.of(done));
        return this;
    }

    /** Split and amps as the bare class expects them in these conditions, moved by these natural logarithms. */
    public VisitSketch asExpected(Unit unit, double lnSplit, double lnAmps) {
        Expectation expectation = Expecter.expect(Screener.screen(unit, visit("sketch", unit)), new Closings(), UsualVolts.UNKNOWN);
        split = Math.exp(expectation.lnSplit() + lnSplit) * 1.8;
        amps = Math.exp(expectation.lnAmps() + lnAmps);
        return this;
    }

    public Visit visit(String id, Unit unit) {
        return new Visit(id, unit.id(), at.toInstant(OFFSET), OFFSET, technician, instruments, readings(), FanSpeed.HIGH, PowerSource.SHORE,
                filter, coil, iced, Set.copyOf(work), "");
    }

    private Readings readings() {
        ReadingsBuilder readings = new ReadingsBuilder().ambientAt(ambientAt);
        if (!Double.isNaN(returnF)) {
            readings.returnDryBulb(Temperature.fahrenheit(returnF));
            if (!Double.isNaN(split)) {
                readings.supplyDryBulb(Temperature.fahrenheit(returnF - split));
            }
        }
        read(humidity).ifPresent(v -> readings.returnMoisture(new Moisture.Relative(RelativeHumidity.percent(v))));
        read(ambientF).ifPresent(v -> readings.ambientDryBulb(Temperature.fahrenheit(v)));
        read(volts).ifPresent(v -> readings.volts(new Voltage(v)));
        read(minutes).ifPresent(v -> readings.runTime(new RunTime(v)));
        read(amps).ifPresent(v -> readings.amps(new Current(v)));
        read(roomF).ifPresent(v -> readings.roomDryBulb(Temperature.fahrenheit(v)));
        read(leavingF).ifPresent(v -> readings.condenserLeaving(Temperature.fahrenheit(v)));
        read(fanOnly).ifPresent(v -> readings.fanOnlyAmps(new Current(v)));
        read(microfarads).ifPresent(v -> readings.capacitor(new Capacitance(v)));
        return readings.build();
    }

    private static Optional<Double> read(double value) {
        return Double.isNaN(value) ? Optional.empty() : Optional.of(value);
    }
}
