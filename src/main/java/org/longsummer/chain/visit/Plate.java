package org.longsummer.chain.visit;

import java.util.Optional;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Voltage;

/**
 * What the nameplate says, as far as it could be read.
 *
 * @param nominal nominal cooling capacity
 * @param refrigerant designation such as {@code R-410A}
 * @param ratedAmps amps printed on the plate
 * @param ratedAmpsKind what those amps mean; makers choose differently
 * @param ratedVolts rated voltage
 * @param variableSpeed a variable-speed compressor: its amps say nothing about its health
 * @param softStarter a soft starter is fitted: lowers the start peak, not the running amps
 * @param capacitorLabel capacitance printed on the run capacitor
 */
public record Plate(Optional<CoolingCapacity> nominal, Optional<String> refrigerant, Optional<Current> ratedAmps,
        AmpsKind ratedAmpsKind, Optional<Voltage> ratedVolts, boolean variableSpeed, boolean softStarter,
        Optional<Capacitance> capacitorLabel) {

    /** A plate that could not be read. */
    public static final Plate UNREAD = new Plate(Optional.empty(), Optional.empty(), Optional.empty(), AmpsKind.UNKNOWN,
            Optional.empty(), false, false, Optional.empty());
}
