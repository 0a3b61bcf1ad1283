package org.longsummer.chain.visit;

import java.util.Optional;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.Voltage;

/**
 * What was read from instruments at one visit. Every reading may be missing; an empty one was not taken.
 *
 * @param returnDryBulb return air at the filter or grille
 * @param returnMoisture humidity of the return air
 * @param supplyDryBulb supply air
 * @param supplyAt where the supply air was read
 * @param ambientDryBulb outdoor air in the shade
 * @param ambientAt where the outdoor air was read
 * @param ambientHumidity outdoor relative humidity
 * @param amps total running amps around one conductor
 * @param volts voltage under load
 * @param runTime minutes since the compressor started
 * @param condenserEntering air entering the condenser
 * @param condenserLeaving air leaving the condenser
 * @param roomDryBulb air in the middle of the room
 * @param returnSecondDryBulb return air by a second thermometer, held beside the first
 * @param fanOnlyAmps amps with the fan alone on high
 * @param startPeak highest amps at start
 * @param capacitor measured capacitance of the run capacitor
 */
public record Readings(Optional<Temperature> returnDryBulb, Optional<Moisture> returnMoisture, Optional<Temperature> supplyDryBulb,
        SupplyAt supplyAt, Optional<Temperature> ambientDryBulb, AmbientAt ambientAt, Optional<RelativeHumidity> ambientHumidity,
        Optional<Current> amps, Optional<Voltage> volts, Optional<RunTime> runTime, Optional<Temperature> condenserEntering,
        Optional<Temperature> condenserLeaving, Optional<Temperature> roomDryBulb, Optional<Temperature> returnSecondDryBulb,
        Optional<Current> fanOnlyAmps, Optional<Current> startPeak, Optional<Capacitance> capacitor) {

    /** Nothing read yet. */
    public static final Readings NONE = new Readings(Optional.empty(), Optional.empty(), Optional.empty(), SupplyAt.UNKNOWN,
            Optional.empty(), AmbientAt.UNKNOWN, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Return air minus supply air, when both were read. */
    public Optional<TemperatureDifference> split() {
        return returnDryBulb.isPresent() && supplyDryBulb.isPresent()
                ? Optional.of(returnDryBulb.get().minus(supplyDryBulb.get())) : Optional.empty();
    }
}
