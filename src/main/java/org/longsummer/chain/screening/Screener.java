package org.longsummer.chain.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;

/**
 * Looks for the fingerprints of gross mistakes in raw readings, each by itself and against one another.
 *
 * <p>The limits are common practice of the trade, no published source, save where the constant says so; they only separate what no
 * roof unit can show from what some unit might. What fits a unit's limits but not its expectation is left to the later stages.
 * A mistake in return, supply, ambient, amps or volts makes the visit a retake; one in an optional box only empties that box.
 */
public final class Screener {
    private static final Temperature COOL_RETURN = Temperature.fahrenheit(65);
    private static final Temperature WARM_RETURN = Temperature.fahrenheit(95);
    private static final Temperature WARM_ROOM = Temperature.fahrenheit(70);
    /** Residential check, outdoors at least 55 °F [ca-ra3-2008]; roof units' makers ask for more: practice. */
    private static final Temperature TOO_COOL = Temperature.fahrenheit(60);
    private static final Temperature COOL = Temperature.fahrenheit(75);
    private static final Temperature HOT = Temperature.fahrenheit(115);
    private static final Temperature FREEZING = Temperature.fahrenheit(32);
    private static final TemperatureDifference STOPPED_SPLIT = TemperatureDifference.fahrenheit(5);
    private static final TemperatureDifference NO_SPLIT = TemperatureDifference.fahrenheit(2.7);
    private static final TemperatureDifference LARGEST_SPLIT = TemperatureDifference.fahrenheit(50);
    private static final RunTime SHORTEST_RUN = new RunTime(6);
    private static final RunTime SETTLED_RUN = new RunTime(15);
    /** 115 V − 10 % and + 10 %: [nema-mg1] section 12. Beyond 0.82 and 1.18 nothing is judged. */
    private static final double LOW_VOLTS = 0.90;
    private static final double HIGH_VOLTS = 1.10;
    private static final double LEAST_VOLTS = 0.82;
    private static final double MOST_VOLTS = 1.18;
    private static final double NO_VOLTS = 0.50;

    private final Unit unit;
    private final Visit visit;
    private final Readings readings;
    private final RunningAmps limits;
    private final List<Finding> findings = new ArrayList<>();

    private Screener(Unit unit, Visit visit) {
        this.unit = unit;
        this.visit = visit;
        this.readings = visit.readings();
        this.limits = RunningAmps.of(unit.plate());
    }

    /** Screens one visit of a unit. Pure: the same visit gives the same findings. */
    public static Screening screen(Unit unit, Visit visit) {
        return new Screener(unit, visit).run();
    }

    private Screening run() {
        temperatures();
        boolean compressorOff = findings.stream().noneMatch(Finding::retake) && isCompressorOff();
        if (compressorOff) {
            note(Mistake.COMPRESSOR_OFF, readings.amps().isPresent() ? Field.AMPS : Field.WHOLE_VISIT, readings.amps(), false);
        } else {
            amps();
            circumstances();
        }
        volts();
        findings.addAll(OptionalReadings.findings(unit, readings, limits, isMistaken(Field.RETURN_DRY_BULB)));
        findings.sort((a, b) -> Boolean.compare(b.retake(), a.retake()));
        return new Screening(unit, visit, findings, compressorOff);
    }

    private boolean isMistaken(Field field) {
        return new Screening(unit, visit, findings, false).isMistaken(field);
    }

    private void note(Mistake mistake, Field field, Optional<? extends Quantity> given, boolean retake) {
        findings.add(new Finding(mistake, field, given.map(quantity -> quantity), retake));
    }

    private void temperatures() {
        if (readings.split().isEmpty() && readings.amps().isEmpty()) {
            note(Mistake.NOTHING_TO_JUDGE, Field.WHOLE_VISIT, Optional.empty(), true);
        }
        readings.returnDryBulb().ifPresent(this::returnAir);
        readings.supplyDryBulb().ifPresent(this::supplyAir);
        readings.ambientDryBulb().ifPresent(this::ambient);
        if (findings.stream().noneMatch(Finding::retake)) {
            readings.split().ifPresent(this::split);
        }
    }

    private void returnAir(Temperature t) {
        boolean swapped = readings.supplyDryBulb().filter(supply -> supply.compareTo(t) > 0 && Thermometer.RETURN.mistake(supply).isEmpty())
                .isPresent() && t.compareTo(FREEZING) > 0;
        if (swapped) {
            return;
        }
        Thermometer.RETURN.mistake(t).ifPresent(mistake -> note(mistake, Field.RETURN_DRY_BULB, Optional.of(t), true));
        if (Thermometer.RETURN.mistake(t).isPresent()) {
            return;
        }
        if (t.compareTo(COOL_RETURN) < 0) {
            note(Mistake.RETURN_COLD, Field.RETURN_DRY_BULB, Optional.of(t), false);
        } else if (t.compareTo(WARM_RETURN) > 0) {
            note(Mistake.RETURN_HOT, Field.RETURN_DRY_BULB, Optional.of(t), false);
        }
    }

    private void supplyAir(Temperature t) {
        boolean others = readings.returnDryBulb().filter(Thermometer.RETURN::isCelsiusTyped).isPresent();
        Optional<Mistake> mistake = others && Thermometer.SUPPLY.isCelsiusTyped(t) ? Optional.of(Mistake.CELSIUS_TYPED)
                : Thermometer.SUPPLY.mistake(t);
        mistake.ifPresent(m -> note(m, Field.SUPPLY_DRY_BULB, Optional.of(t), true));
    }

    /** A number such as 35 may be a cold day or degrees Celsius: a warm room, or a return in Celsius, tells which. */
    private void ambient(Temperature t) {
        Optional<Mistake> mistake = Thermometer.AMBIENT.mistake(t);
        boolean warmRoom = readings.returnDryBulb().filter(r -> r.compareTo(WARM_ROOM) > 0 || Thermometer.RETURN.isCelsiusTyped(r)).isPresent();
        boolean cold = t.compareTo(TOO_COOL) < 0 && !mistake.equals(Optional.of(Mistake.DECIMAL_SLIP))
                && !(warmRoom && Thermometer.AMBIENT.isCelsiusTyped(t));
        if (cold) {
            note(Mistake.TOO_COOL, Field.AMBIENT_DRY_BULB, Optional.of(t), true);
        } else if (mistake.isPresent()) {
            note(mistake.get(), Field.AMBIENT_DRY_BULB, Optional.of(t), true);
        } else if (t.compareTo(COOL) < 0) {
            note(Mistake.COOL_DAY, Field.AMBIENT_DRY_BULB, Optional.of(t), false);
        } else if (t.compareTo(HOT) > 0) {
            note(Mistake.TOO_HOT, Field.AMBIENT_DRY_BULB, Optional.of(t), false);
        }
    }

    private void split(TemperatureDifference split) {
        if (split.kelvins() < -STOPPED_SPLIT.kelvins()) {
            note(Mistake.SWAPPED, Field.SUPPLY_DRY_BULB, readings.supplyDryBulb(), true);
        } else if (split.kelvins() > LARGEST_SPLIT.kelvins()) {
            note(Mistake.IMPOSSIBLE, Field.SUPPLY_DRY_BULB, readings.supplyDryBulb(), true);
        }
    }

    private boolean isCompressorOff() {
        Optional<TemperatureDifference> small = readings.split().filter(split -> Math.abs(split.kelvins()) < STOPPED_SPLIT.kelvins());
        boolean longEnough = readings.runTime().filter(time -> time.minutes() < SHORTEST_RUN.minutes()).isEmpty();
        if (small.isEmpty() || !longEnough) {
            return false;
        }
        return readings.amps().map(amps -> amps.amperes() > limits.nothing() && amps.amperes() < limits.fansAlone())
                .orElse(small.get().kelvins() < NO_SPLIT.kelvins());
    }

    private void amps() {
        boolean variableSpeed = unit.plate().variableSpeed();
        readings.amps().flatMap(amps -> limits.mistake(amps.amperes(), variableSpeed))
                .ifPresent(mistake -> note(mistake, Field.AMPS, readings.amps(), true));
        if (visit.powerSource() == PowerSource.INVERTER && readings.amps().isPresent()) {
            note(Mistake.INVERTER, Field.POWER_SOURCE, Optional.empty(), false);
        }
        if (variableSpeed && readings.amps().isPresent()) {
            note(Mistake.VARIABLE_SPEED, Field.AMPS, readings.amps(), false);
        }
    }

    private void circumstances() {
        readings.runTime().ifPresent(time -> {
            if (time.minutes() < SHORTEST_RUN.minutes()) {
                note(Mistake.NOT_SETTLED, Field.RUN_TIME, readings.runTime(), true);
            } else if (time.minutes() < SETTLED_RUN.minutes()) {
                note(Mistake.BARELY_SETTLED, Field.RUN_TIME, readings.runTime(), false);
            }
        });
        if (visit.fanSpeed() == FanSpeed.LOW) {
            note(Mistake.FAN_LOW, Field.FAN_SPEED, Optional.empty(), true);
        }
        if (visit.icedCoil()) {
            note(Mistake.COIL_ICED, Field.WHOLE_VISIT, Optional.empty(), false);
        }
    }

    private void volts() {
        double rated = RunningAmps.ratedVolts(unit.plate());
        readings.volts().ifPresent(volts -> {
            double share = volts.volts() / rated;
            if (isNearRated(share / 10) || isNearRated(share * 10)) {
                note(Mistake.DECIMAL_SLIP, Field.VOLTS, readings.volts(), true);
            } else if (share < NO_VOLTS) {
                note(Mistake.IMPOSSIBLE, Field.VOLTS, readings.volts(), true);
            } else if (share < LOW_VOLTS) {
                note(Mistake.VOLTS_LOW, Field.VOLTS, readings.volts(), share < LEAST_VOLTS);
            } else if (share > HIGH_VOLTS) {
                note(Mistake.VOLTS_HIGH, Field.VOLTS, readings.volts(), share > MOST_VOLTS);
            }
        });
    }

    private static boolean isNearRated(double share) {
        return share >= LEAST_VOLTS && share <= MOST_VOLTS;
    }
}
