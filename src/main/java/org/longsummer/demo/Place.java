package org.longsummer.demo;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.longsummer.quantity.Altitude;
import org.longsummer.store.Depot;

/**
 * An invented depot.
 *
 * @param name what it is called
 * @param altitudeFeet ft
 * @param zone its clocks
 * @param climate its summers
 * @param technicians who reads there
 */
record Place(String name, double altitudeFeet, ZoneId zone, Climate climate, List<Technician> technicians) {
    Altitude altitude() {
        return Altitude.feet(altitudeFeet);
    }

    Depot depot() {
        return new Depot(name, Optional.of(altitude()), Optional.of(zone), Optional.empty());
    }
}
