package org.longsummer.chain.visit;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.season.SeasonClock;
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
 * @param clock of the depot's running, where somebody said how much units run there; else the months of the visits tell
 */
public record Unit(String id, String label, String site, Plate plate, AirDelivery delivery, Optional<LocalDate> installedOn,
        Altitude altitude, Optional<SeasonClock> clock) {

    /** A unit at a depot of which nobody said how much units run there. */
    public Unit(String id, String label, String site, Plate plate, AirDelivery delivery, Optional<LocalDate> installedOn, Altitude altitude) {
        this(id, label, site, plate, delivery, installedOn, altitude, Optional.empty());
    }

    /** The same unit by another clock. */
    public Unit by(Optional<SeasonClock> otherClock) {
        return new Unit(id, label, site, plate, delivery, installedOn, altitude, otherClock);
    }

    /** The new machine that took this one's place: same place and model, age zero. */
    public Unit replacedOn(LocalDate day) {
        return new Unit(id, label, site, plate, delivery, Optional.of(day), altitude, clock);
    }
}
