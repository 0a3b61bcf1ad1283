package org.longsummer.chain.visit;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.quantity.Altitude;

/**
 * One machine in one place: a roof air conditioner with its plate and where it usually stands.
 *
 * @param id the fleet's own identifier, unique
 * @param label what people call it
 * @param site the depot's name; empty when none
 * @param plate what the nameplate says
 * @param delivery how the cold air reaches the room
 * @param installedOn day of installation, where known
 * @param altitude height of the depot above sea level
 */
public record Unit(String id, String label, String site, Plate plate, AirDelivery delivery, Optional<LocalDate> installedOn,
        Altitude altitude) {

    /** The new machine that took this one's place: same place and model, age zero. */
    public Unit replacedOn(LocalDate day) {
        return new Unit(id, label, site, plate, delivery, Optional.of(day), altitude);
    }
}
