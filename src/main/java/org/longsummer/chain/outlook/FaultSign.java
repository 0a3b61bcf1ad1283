package org.longsummer.chain.outlook;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.condition.Fault;

/**
 * What a fault shows by the time an owner should no longer accept it, against the same unit sound in the season's usual weather.
 *
 * @param fault what is wrong
 * @param split ratio to the sound unit
 * @param amps the same
 * @param capacity the same
 */
public record FaultSign(Fault fault, double split, double amps, double capacity) {

    /** One a fault, each at its limit; what never reaches it, at the furthest severity. */
    public static List<FaultSign> all(FaultModel model) {
        List<FaultSign> signs = new ArrayList<>();
        for (Fault fault : Fault.values()) {
            Effects effects = model.effects(fault);
            double severity = Math.min(effects.severityAtLimit(), (Effects.POINTS - 1) * Effects.STEP);
            signs.add(new FaultSign(fault, effects.split(severity), effects.amps(severity), effects.capacity(severity)));
        }
        return signs;
    }
}
