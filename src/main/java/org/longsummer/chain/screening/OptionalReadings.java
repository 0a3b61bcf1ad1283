package org.longsummer.chain.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;

/** Humidity and the optional boxes: a mistake in one of them empties that box and leaves the visit. Limits are practice. */
final class OptionalReadings {
    private static final double LEAST_HUMIDITY = 0.01;
    private static final double DRY_ROOM = 0.05;
    private static final double WET_ROOM = 0.95;
    private static final Temperature DRIEST_DEW_POINT = Temperature.fahrenheit(-20);
    private static final double LARGEST_CAPACITOR = 150;
    private static final double MOST_FAN_AMPS = 8;
    private static final double HIGHEST_START_PEAK = 150;
    /** Three times the standard uncertainty of the difference of two thermometers as technicians carry them, K. */
    private static final double THERMOMETERS_DIFFER = 3 * Math.sqrt(2) * Instruments.DEFAULT.probe().kelvins();

    private final Unit unit;
    private final Readings readings;
    private final RunningAmps limits;
    private final boolean returnMistaken;
    private final List<Finding> findings = new ArrayList<>();

    private OptionalReadings(Unit unit, Readings readings, RunningAmps limits, boolean returnMistaken) {
        this.unit = unit;
        this.readings = readings;
        this.limits = limits;
        this.returnMistaken = returnMistaken;
    }

    static List<Finding> findings(Unit unit, Readings readings, RunningAmps limits, boolean returnMistaken) {
        return new OptionalReadings(unit, readings, limits, returnMistaken).run();
    }

    private List<Finding> run() {
        readings.returnMoisture().ifPresent(this::moisture);
        readings.ambientHumidity().filter(h -> !isHumidity(h))
                .ifPresent(h -> note(Mistake.HUMIDITY_IMPOSSIBLE, Field.AMBIENT_HUMIDITY, h));
        temperature(Field.ROOM_DRY_BULB, Thermometer.RETURN, readings.roomDryBulb());
        readings.returnSecondDryBulb().ifPresent(this::secondThermometer);
        temperature(Field.CONDENSER_ENTERING, Thermometer.CONDENSER_ENTERING, readings.condenserEntering());
        temperature(Field.CONDENSER_LEAVING, Thermometer.CONDENSER_LEAVING, readings.condenserLeaving());
        electrical();
        return findings;
    }

    private void note(Mistake mistake, Field field, Quantity given) {
        findings.add(new Finding(mistake, field, Optional.of(given), false));
    }

    private void temperature(Field field, Thermometer place, Optional<Temperature> reading) {
        reading.ifPresent(t -> place.mistake(t).ifPresent(mistake -> note(mistake, field, t)));
    }

    private void secondThermometer(Temperature second) {
        Optional<Mistake> mistyped = Thermometer.RETURN.mistake(second);
        if (mistyped.isPresent()) {
            note(mistyped.get(), Field.RETURN_SECOND_DRY_BULB, second);
        } else if (dryBulb().filter(first -> Math.abs(first.minus(second).kelvins()) > THERMOMETERS_DIFFER).isPresent()) {
            note(Mistake.THERMOMETERS_DISAGREE, Field.RETURN_SECOND_DRY_BULB, second);
        }
    }

    private static boolean isHumidity(RelativeHumidity humidity) {
        return humidity.fraction() >= LEAST_HUMIDITY && humidity.fraction() <= 1;
    }

    private void moisture(Moisture moisture) {
        if (moisture instanceof Moisture.Relative relative) {
            relative(relative.humidity());
        } else if (moisture instanceof Moisture.WetBulb wet) {
            if (!isWetBulb(wet.temperature())) {
                note(Mistake.HUMIDITY_IMPOSSIBLE, Field.RETURN_HUMIDITY, wet.temperature());
            }
        } else if (moisture instanceof Moisture.DewPoint dew) {
            boolean aboveDryBulb = dryBulb().filter(t -> dew.temperature().compareTo(t) > 0).isPresent();
            if (aboveDryBulb || dew.temperature().compareTo(DRIEST_DEW_POINT) < 0
                    || dew.temperature().compareTo(Thermometer.RETURN.highest()) > 0) {
                note(Mistake.HUMIDITY_IMPOSSIBLE, Field.RETURN_HUMIDITY, dew.temperature());
            }
        }
    }

    private void relative(RelativeHumidity humidity) {
        if (!isHumidity(humidity)) {
            note(Mistake.HUMIDITY_IMPOSSIBLE, Field.RETURN_HUMIDITY, humidity);
        } else if (humidity.fraction() < DRY_ROOM || humidity.fraction() > WET_ROOM) {
            note(Mistake.HUMIDITY_DOUBTFUL, Field.RETURN_HUMIDITY, humidity);
        }
    }

    private Optional<Temperature> dryBulb() {
        return returnMistaken ? Optional.empty() : readings.returnDryBulb();
    }

    /** At most the dry bulb, and not below that of dry air; without a dry bulb, within what rooms have. */
    private boolean isWetBulb(Temperature wetBulb) {
        if (wetBulb.compareTo(DRIEST_DEW_POINT) < 0 || wetBulb.compareTo(Thermometer.RETURN.highest()) > 0) {
            return false;
        }
        return dryBulb().map(t -> MoistAir.canHaveWetBulb(t, wetBulb, pressure())).orElse(true);
    }

    private Pressure pressure() {
        double metres = Math.max(StandardAtmosphere.LOWEST.metres(), Math.min(StandardAtmosphere.HIGHEST.metres(), unit.altitude().metres()));
        return StandardAtmosphere.pressure(new Altitude(metres));
    }

    private void electrical() {
        readings.fanOnlyAmps().filter(fan -> fan.amperes() < limits.nothing() / 2 || fan.amperes() > MOST_FAN_AMPS * limits.voltageShare()
                || readings.amps().filter(all -> all.amperes() < fan.amperes()).isPresent())
                .ifPresent(fan -> note(Mistake.IMPOSSIBLE, Field.FAN_ONLY_AMPS, fan));
        readings.startPeak().filter(peak -> peak.amperes() > HIGHEST_START_PEAK * limits.voltageShare()
                || peak.amperes() < readings.amps().map(all -> all.amperes()).orElse(limits.least()))
                .ifPresent(peak -> note(Mistake.IMPOSSIBLE, Field.START_PEAK, peak));
        readings.capacitor().filter(c -> !(c.microfarads() > 1 && c.microfarads() < LARGEST_CAPACITOR))
                .ifPresent(c -> note(Mistake.IMPOSSIBLE, Field.CAPACITOR, c));
    }
}
