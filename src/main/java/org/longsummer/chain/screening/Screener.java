package org.longsummer.chain.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;

/**
 * Looks for the fingerprints of gross mistakes in raw readings, each by itself and against one another.
 *
 * <p>The limits are common practice of the trade, no published source, save where the constant says so; they only separate what no
 * roof unit can show from what some unit might. What fits a unit's limits but not its expectation is left to the later stages.
 */
public final class Screener {
    private static final Temperature COOLEST_RETURN = Temperature.fahrenheit(55);
    private static final Temperature COOL_RETURN = Temperature.fahrenheit(65);
    private static final Temperature WARM_RETURN = Temperature.fahrenheit(95);
    private static final Temperature WARMEST_RETURN = Temperature.fahrenheit(125);
    private static final Temperature COLDEST_SUPPLY = Temperature.fahrenheit(25);
    private static final Temperature TOO_COOL = Temperature.fahrenheit(60);
    private static final Temperature COOL = Temperature.fahrenheit(75);
    private static final Temperature HOT = Temperature.fahrenheit(115);
    private static final Temperature HOTTEST = Temperature.fahrenheit(140);
    private static final Temperature BELOW_ANY_ROOM = Temperature.fahrenheit(48);
    private static final TemperatureDifference STOPPED_SPLIT = TemperatureDifference.fahrenheit(5);
    private static final TemperatureDifference LARGEST_SPLIT = TemperatureDifference.fahrenheit(50);
    private static final Current CLAMP_CANCELS = new Current(0.8);
    private static final Current FAN_ALONE = new Current(4.5);
    private static final Current RUNNING_LEAST = new Current(4.0);
    private static final Current RUNNING_MOST = new Current(24);
    private static final Current START_LIKE = new Current(85);
    private static final RunTime SHORTEST_RUN = new RunTime(6);
    private static final RunTime SETTLED_RUN = new RunTime(15);
    /** 115 V − 10 % and + 10 %: NEMA MG-1 section 12. Beyond 0.82 and 1.18 nothing is judged. */
    private static final double LOW_VOLTS = 0.90;
    private static final double HIGH_VOLTS = 1.10;
    private static final double LEAST_VOLTS = 0.82;
    private static final double MOST_VOLTS = 1.18;
    private static final double USUAL_VOLTS = 115;

    private final Unit unit;
    private final Visit visit;
    private final Readings readings;
    private final List<Finding> findings = new ArrayList<>();

    private Screener(Unit unit, Visit visit) {
        this.unit = unit;
        this.visit = visit;
        this.readings = visit.readings();
    }

    /** Screens one visit of a unit. Pure: the same visit gives the same findings. */
    public static Screening screen(Unit unit, Visit visit) {
        return new Screener(unit, visit).run();
    }

    private Screening run() {
        temperatures();
        boolean compressorOff = findings.stream().noneMatch(Finding::retake) && isCompressorOff();
        if (compressorOff) {
            note(Mistake.COMPRESSOR_OFF, Field.AMPS, readings.amps(), false);
        } else {
            amps();
            circumstances();
        }
        volts();
        findings.sort((a, b) -> Boolean.compare(b.retake(), a.retake()));
        return new Screening(unit, visit, findings, compressorOff);
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
        readings.returnMoisture().ifPresent(moisture -> {
            if (moisture instanceof Moisture.Relative relative
                    && (relative.humidity().fraction() < 0.05 || relative.humidity().fraction() > 0.95)) {
                note(Mistake.HUMIDITY_DOUBTFUL, Field.RETURN_HUMIDITY, Optional.of(relative.humidity()), false);
            }
        });
    }

    private void returnAir(Temperature t) {
        boolean supplyWarmer = readings.supplyDryBulb().filter(s -> s.compareTo(t) > 0 && s.compareTo(COOLEST_RETURN) > 0).isPresent();
        if (supplyWarmer && t.compareTo(Temperature.fahrenheit(32)) > 0) {
            return;
        }
        if (isPowerOfTen(t, COOLEST_RETURN, WARMEST_RETURN)) {
            note(Mistake.DECIMAL_SLIP, Field.RETURN_DRY_BULB, Optional.of(t), true);
        } else if (t.compareTo(BELOW_ANY_ROOM) < 0 && isCelsius(t, 15, 48)) {
            note(Mistake.CELSIUS_TYPED, Field.RETURN_DRY_BULB, Optional.of(t), true);
        } else if (t.compareTo(COOLEST_RETURN) < 0 || t.compareTo(WARMEST_RETURN) > 0) {
            note(Mistake.IMPOSSIBLE, Field.RETURN_DRY_BULB, Optional.of(t), true);
        } else if (t.compareTo(COOL_RETURN) < 0 || t.compareTo(WARM_RETURN) > 0) {
            note(Mistake.RETURN_COLD, Field.RETURN_DRY_BULB, Optional.of(t), false);
        }
    }

    private void supplyAir(Temperature t) {
        if (isPowerOfTen(t, COLDEST_SUPPLY, WARMEST_RETURN)) {
            note(Mistake.DECIMAL_SLIP, Field.SUPPLY_DRY_BULB, Optional.of(t), true);
        } else if (t.compareTo(COLDEST_SUPPLY) < 0) {
            note(isCelsius(t, 0, 30) ? Mistake.CELSIUS_TYPED : Mistake.IMPOSSIBLE, Field.SUPPLY_DRY_BULB, Optional.of(t), true);
        } else if (t.compareTo(WARMEST_RETURN) > 0) {
            note(Mistake.IMPOSSIBLE, Field.SUPPLY_DRY_BULB, Optional.of(t), true);
        }
    }

    private void ambient(Temperature t) {
        if (isPowerOfTen(t, TOO_COOL, HOTTEST)) {
            note(Mistake.DECIMAL_SLIP, Field.AMBIENT_DRY_BULB, Optional.of(t), true);
        } else if (t.compareTo(TOO_COOL) < 0) {
            boolean warmRoom = readings.returnDryBulb().filter(r -> r.compareTo(Temperature.fahrenheit(70)) > 0).isPresent();
            note(isCelsius(t, 18, 48) && warmRoom ? Mistake.CELSIUS_TYPED : Mistake.TOO_COOL, Field.AMBIENT_DRY_BULB, Optional.of(t), true);
        } else if (t.compareTo(HOTTEST) > 0) {
            note(Mistake.IMPOSSIBLE, Field.AMBIENT_DRY_BULB, Optional.of(t), true);
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

    /** A temperature that fits the range only after moving its decimal point by one place. */
    private static boolean isPowerOfTen(Temperature t, Temperature low, Temperature high) {
        return fits(t.fahrenheit() / 10, low, high) && t.compareTo(high) > 0
                || fits(t.fahrenheit() * 10, low, high) && t.fahrenheit() < 14 && t.compareTo(low) < 0;
    }

    private static boolean fits(double fahrenheit, Temperature low, Temperature high) {
        return fahrenheit >= low.fahrenheit() && fahrenheit <= high.fahrenheit();
    }

    private static boolean isCelsius(Temperature t, double low, double high) {
        return t.fahrenheit() >= low && t.fahrenheit() <= high;
    }

    private boolean isCompressorOff() {
        boolean noSplit = readings.split().filter(split -> Math.abs(split.kelvins()) < STOPPED_SPLIT.kelvins()).isPresent();
        boolean fanAmps = readings.amps().filter(amps -> amps.amperes() > CLAMP_CANCELS.amperes()
                && amps.amperes() < FAN_ALONE.amperes()).isPresent();
        boolean longEnough = readings.runTime().filter(time -> time.minutes() < SHORTEST_RUN.minutes()).isEmpty();
        return longEnough && noSplit && (fanAmps || readings.amps().isEmpty() && readings.split().get().kelvins() < 1.5);
    }

    private void amps() {
        readings.amps().ifPresent(amps -> {
            double a = amps.amperes();
            if (a < CLAMP_CANCELS.amperes()) {
                note(Mistake.CLAMP_AROUND_BOTH, Field.AMPS, readings.amps(), true);
            } else if (a < 2 && a * 10 > RUNNING_LEAST.amperes()) {
                note(Mistake.DECIMAL_SLIP, Field.AMPS, readings.amps(), true);
            } else if (a < RUNNING_LEAST.amperes()) {
                note(Mistake.IMPOSSIBLE, Field.AMPS, readings.amps(), true);
            } else if (a > START_LIKE.amperes()) {
                note(Mistake.TEN_TURNS, Field.AMPS, readings.amps(), true);
            } else if (a > 30) {
                note(Mistake.HOLD_LEFT_ON, Field.AMPS, readings.amps(), true);
            } else if (a > RUNNING_MOST.amperes()) {
                note(Mistake.CLAMP_AROUND_CORD, Field.AMPS, readings.amps(), true);
            }
        });
        if (visit.powerSource() == PowerSource.INVERTER) {
            note(Mistake.INVERTER, Field.POWER_SOURCE, Optional.empty(), false);
        }
        if (unit.plate().variableSpeed() && readings.amps().isPresent()) {
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
        double rated = unit.plate().ratedVolts().map(v -> v.volts()).orElse(USUAL_VOLTS);
        readings.volts().ifPresent(volts -> {
            double share = volts.volts() / rated;
            if (share < LOW_VOLTS) {
                note(Mistake.VOLTS_LOW, Field.VOLTS, readings.volts(), share < LEAST_VOLTS);
            } else if (share > HIGH_VOLTS) {
                note(Mistake.VOLTS_HIGH, Field.VOLTS, readings.volts(), share > MOST_VOLTS);
            }
        });
    }
}
