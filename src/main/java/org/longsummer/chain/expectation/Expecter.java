package org.longsummer.chain.expectation;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.expectation.Expectation.Influence;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.screening.Screening;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.cooling.MotorVoltage;
import org.longsummer.science.cooling.RoofUnit;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.uncertainty.Component.Source;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * Works out what a sound unit should show, and what makes a reading differ from it at one visit.
 *
 * <p>First-order propagation (JCGM 100:2008, 5.1.2): sensitivities by differentiating the expectation at the visit's own conditions.
 */
public final class Expecter {
    private static final double STEP_DRY_BULB = 0.5;
    private static final double STEP_CONDENSER = 1.0;
    /** Scatter of the published curves about measured machines, ln (see reference/sources.md). */
    private static final double MODEL_SPLIT_U = 0.020;
    private static final double MODEL_AMPS_U = 0.010;
    /** What a duct's gain does anew on another day; its level belongs to the unit and is learned with it (practice: a tenth). */
    private static final double DUCT_GAIN_U = 0.006;
    /** Amps by the motor's curve, ln per share of volts off the rated ones: 1 % at ±10 %, half the spread of published motors; the rest
     * is the unit's own and learned with it. */
    private static final double MOTOR_CURVE_U = 0.1;
    /** The warmest and coolest outdoor air for which the curves were measured, °F. */
    private static final double COOL_EDGE = 75;
    private static final double HOT_EDGE = 110;

    private final Surroundings conditions;
    private final RoofUnit machine;
    private final double lnSplit;
    private final double lnPower;
    private final ByHumidity splitByHumidity;
    private final ByHumidity powerByHumidity;

    private Expecter(Surroundings conditions) {
        this.conditions = conditions;
        this.machine = new RoofUnit(conditions.returnAir(), conditions.condenserAir());
        this.lnSplit = lnSplit(machine, conditions);
        this.lnPower = Math.log(machine.sound().powerRatio());
        double u = conditions.lnHumidityU();
        Moved drier = movedBy(-Math.sqrt(3) * u);
        Moved moister = movedBy(Math.sqrt(3) * u);
        splitByHumidity = ByHumidity.over(drier.lnSplit - lnSplit, moister.lnSplit - lnSplit, u);
        powerByHumidity = ByHumidity.over(drier.lnPower - lnPower, moister.lnPower - lnPower, u);
    }

    /** The sound unit in air of another humidity. */
    private Moved movedBy(double lnHumidity) {
        MoistAir air = conditions.returnAir();
        double humidity = Math.min(0.99, air.relativeHumidity().fraction() * Math.exp(lnHumidity));
        MoistAir other = MoistAir.of(air.dryBulb(), new RelativeHumidity(humidity), air.pressure());
        RoofUnit moved = new RoofUnit(other, conditions.condenserAir());
        return new Moved(lnSplit(moved, conditions.withReturn(other)), Math.log(moved.sound().powerRatio()));
    }

    private record Moved(double lnSplit, double lnPower) {}

    /**
     * What an uncertain humidity does to a result. Within its uncertainty the coil may be dry or wet, so that the slope at one point
     * will not do: three points (Gauss and Hermite) give the mean and the spread of a parabola exactly.
     *
     * @param slope change of the result per unit of ln humidity, as large as its spread asks for
     * @param shift mean of the result less its value at the likeliest humidity
     */
    private record ByHumidity(double slope, double shift) {
        static ByHumidity over(double drier, double moister, double u) {
            double shift = (drier + moister) / 6;
            double variance = (drier * drier + moister * moister) / 6 - shift * shift;
            double sign = moister >= drier ? 1 : -1;
            return new ByHumidity(sign * Math.sqrt(variance) / u, shift);
        }
    }

    /** What the unit should show, by its class and plate, in the conditions of the screened visit. */
    public static Expectation expect(Screening screening, Closings closings, UsualVolts usualVolts) {
        Surroundings conditions = new SurroundingsReader(screening, usualVolts).read(closings);
        return new Expecter(conditions).expectation(screening);
    }

    private Expectation expectation(Screening screening) {
        Uncertain level = RatedLevel.lnAmps(screening.unit().plate());
        double lnVolts = Math.log(MotorVoltage.currentRatio(conditions.voltageRatio().value()));
        double lnAmps = level.value() + lnPower + powerByHumidity.shift + lnVolts;
        return new Expectation(screening, conditions, machine, lnSplit + splitByHumidity.shift, lnAmps, level.standardUncertainty(),
                influences(screening.visit(), lnAmps));
    }

    /** The split as the probe sees it: what the duct gains from the ceiling is lost. */
    private static double lnSplit(RoofUnit machine, Surroundings conditions) {
        double split = machine.sound().split().kelvins();
        double supply = conditions.returnAir().dryBulb().kelvins() - split;
        double lost = conditions.ductGain() * (conditions.cavity().kelvins() - supply);
        return Math.log(Math.max(0.3 * split, split - lost));
    }

    private List<Influence> influences(Visit visit, double lnAmps) {
        Instruments instruments = visit.instruments();
        List<Influence> all = new ArrayList<>(10);
        double split = Math.exp(lnSplit);
        probes(all, instruments, split);
        humidity(all);
        condenser(all);
        volts(all, visit.readings().volts().isPresent());
        double above = conditions.cavity().kelvins() - conditions.returnAir().dryBulb().kelvins() + machine.sound().split().kelvins();
        all.add(new Influence("duct and register gain", Source.MODEL, "1", DUCT_GAIN_U, above / split, 0));
        double stretch = stretch(visit);
        all.add(new Influence("published curves, split", Source.MODEL, "1", MODEL_SPLIT_U * stretch, 1, 0));
        all.add(new Influence("published curves, amps", Source.MODEL, "1", MODEL_AMPS_U * stretch, 0, 1));
        double clamp = Math.sqrt(square(instruments.clampRelative()) + square(instruments.clampFloor().amperes() / Math.exp(lnAmps)));
        all.add(new Influence("clamp meter", Source.MEASUREMENT, "1", clamp, 0, 1));
        return all;
    }

    private static double square(double x) {
        return x * x;
    }

    private void probes(List<Influence> all, Instruments instruments, double split) {
        MoistAir air = conditions.returnAir();
        MoistAir warmer = MoistAir.of(new Temperature(air.dryBulb().kelvins() + STEP_DRY_BULB), air.relativeHumidity(), air.pressure());
        RoofUnit moved = new RoofUnit(warmer, conditions.condenserAir());
        double onSplit = (lnSplit(moved, conditions.withReturn(warmer)) - lnSplit) / STEP_DRY_BULB;
        double onAmps = (Math.log(moved.sound().powerRatio()) - lnPower) / STEP_DRY_BULB;
        double u = conditions.returnDryBulbU();
        double supplyU = instruments.probe().kelvins() * 1.2;
        if (instruments.oneProbe()) {
            all.add(new Influence("thermometer, same for return and supply", Source.MEASUREMENT, "K", u, -onSplit, -onAmps));
            supplyU *= 0.5;
        } else {
            all.add(new Influence("return thermometer", Source.MEASUREMENT, "K", u, 1 / split - onSplit, -onAmps));
        }
        all.add(new Influence("supply thermometer and its place", Source.MEASUREMENT, "K", supplyU, -1 / split, 0));
    }

    private void humidity(List<Influence> all) {
        all.add(new Influence(conditions.humidityRead() ? "return humidity" : "return humidity, not read", Source.MEASUREMENT, "1",
                conditions.lnHumidityU(), -splitByHumidity.slope, -powerByHumidity.slope));
    }

    private void condenser(List<Influence> all) {
        Temperature hotter = new Temperature(conditions.condenserAir().kelvins() + STEP_CONDENSER);
        RoofUnit moved = machine.withCondenserAir(hotter);
        double onSplit = (lnSplit(moved, conditions.withCondenserAir(hotter)) - lnSplit) / STEP_CONDENSER;
        double onAmps = (Math.log(moved.sound().powerRatio()) - lnPower) / STEP_CONDENSER;
        all.add(new Influence("air at the condenser", Source.MEASUREMENT, "K", conditions.condenserAirU(), -onSplit, -onAmps));
    }

    private void volts(List<Influence> all, boolean voltsRead) {
        double x = conditions.voltageRatio().value();
        double onAmps = (Math.log(MotorVoltage.currentRatio(x + 0.005)) - Math.log(MotorVoltage.currentRatio(x - 0.005))) / 0.01;
        all.add(new Influence(voltsRead ? "volts" : "volts, not read", Source.MEASUREMENT, "1",
                conditions.voltageRatio().standardUncertainty(), 0, -onAmps));
        all.add(new Influence("motor's current away from its rated volts", Source.MODEL, "1", Math.abs(x - 1), 0, MOTOR_CURVE_U));
    }

    /** How much less the curves can be trusted here than in the middle of their range; also before the unit has settled. */
    private double stretch(Visit visit) {
        double outdoor = conditions.condenserAir().fahrenheit();
        double beyond = Math.max(0, COOL_EDGE - outdoor) / 10 + Math.max(0, outdoor - HOT_EDGE) / 10;
        double indoor = conditions.returnAir().dryBulb().fahrenheit();
        beyond += Math.max(0, 66 - indoor) / 6 + Math.max(0, indoor - 95) / 6;
        double early = visit.readings().runTime().map(time -> Math.max(0, 13 - time.minutes()) / 8).orElse(0.2);
        return 1 + beyond + early;
    }
}
