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
    private static final double STEP_LN_HUMIDITY = 0.05;
    /** Scatter of the published curves about measured machines, ln (see reference/sources.md). */
    private static final double MODEL_SPLIT_U = 0.020;
    private static final double MODEL_AMPS_U = 0.010;
    private static final double DUCT_GAIN_U = 0.015;
    /** The warmest and coolest outdoor air for which the curves were measured, °F. */
    private static final double COOL_EDGE = 75;
    private static final double HOT_EDGE = 110;

    private final Surroundings conditions;
    private final RoofUnit machine;
    private final double lnSplit;
    private final double lnPower;

    private Expecter(Surroundings conditions) {
        this.conditions = conditions;
        this.machine = new RoofUnit(conditions.returnAir(), conditions.condenserAir());
        this.lnSplit = lnSplit(machine, conditions);
        this.lnPower = Math.log(machine.sound().powerRatio());
    }

    /** What the unit should show, by its class and plate, in the conditions of the screened visit. */
    public static Expectation expect(Screening screening, Closings closings, UsualVolts usualVolts) {
        Surroundings conditions = new SurroundingsReader(screening, usualVolts).read(closings);
        return new Expecter(conditions).expectation(screening);
    }

    private Expectation expectation(Screening screening) {
        Uncertain level = RatedLevel.lnAmps(screening.unit().plate());
        double lnVolts = Math.log(MotorVoltage.currentRatio(conditions.voltageRatio().value()));
        double lnAmps = level.value() + lnPower + lnVolts;
        return new Expectation(screening, conditions, machine, lnSplit, lnAmps, level.standardUncertainty(),
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
        double cavity = conditions.cavity().kelvins() - conditions.returnAir().dryBulb().kelvins() + split;
        all.add(new Influence("duct and register gain", Source.MODEL, "1", DUCT_GAIN_U, cavity / split, 0));
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
        Surroundings at = withReturn(warmer);
        double onSplit = (lnSplit(moved, at) - lnSplit) / STEP_DRY_BULB;
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

    private Surroundings withReturn(MoistAir air) {
        Surroundings c = conditions;
        return new Surroundings(air, c.returnDryBulbU(), c.lnHumidityU(), c.humidityRead(), c.condenserAir(), c.condenserAirU(),
                c.voltageRatio(), c.sunHeight(), c.ductGain(), c.cavity());
    }

    private void humidity(List<Influence> all) {
        MoistAir air = conditions.returnAir();
        double factor = Math.exp(-STEP_LN_HUMIDITY);
        MoistAir drier = MoistAir.of(air.dryBulb(), new RelativeHumidity(air.relativeHumidity().fraction() * factor), air.pressure());
        RoofUnit moved = new RoofUnit(drier, conditions.condenserAir());
        double onSplit = (lnSplit - lnSplit(moved, withReturn(drier))) / STEP_LN_HUMIDITY;
        double onAmps = (lnPower - Math.log(moved.sound().powerRatio())) / STEP_LN_HUMIDITY;
        all.add(new Influence(conditions.humidityRead() ? "return humidity" : "return humidity, not read", Source.MEASUREMENT, "1",
                conditions.lnHumidityU(), -onSplit, -onAmps));
    }

    private void condenser(List<Influence> all) {
        RoofUnit moved = new RoofUnit(conditions.returnAir(), new Temperature(conditions.condenserAir().kelvins() + STEP_CONDENSER));
        double onSplit = (lnSplit(moved, conditions) - lnSplit) / STEP_CONDENSER;
        double onAmps = (Math.log(moved.sound().powerRatio()) - lnPower) / STEP_CONDENSER;
        all.add(new Influence("air at the condenser", Source.MEASUREMENT, "K", conditions.condenserAirU(), -onSplit, -onAmps));
    }

    private void volts(List<Influence> all, boolean voltsRead) {
        double x = conditions.voltageRatio().value();
        double onAmps = (Math.log(MotorVoltage.currentRatio(x + 0.005)) - Math.log(MotorVoltage.currentRatio(x - 0.005))) / 0.01;
        double motor = 0.2 * Math.abs(x - 1);
        double u = Math.sqrt(square(conditions.voltageRatio().standardUncertainty()) + square(motor * motor));
        all.add(new Influence(voltsRead ? "volts" : "volts, not read", Source.MEASUREMENT, "1", u, 0, -onAmps));
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
