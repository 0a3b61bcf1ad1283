package org.longsummer.chain.learning;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/**
 * What had been learned across units before the day of one visit.
 *
 * @param classLevel of the unit's class
 * @param technician offset of the instruments used
 * @param slopes of the fleet
 * @param closing the closing it comes from; absent when nothing had been learned
 */
public record Known(ClassLevel classLevel, TechnicianOffset technician, FleetSlopes slopes, Optional<LocalDate> closing) {

    public static Known before(Closings closings, Unit unit, Visit visit) {
        LocalDate day = visit.utcDay();
        ClassLevel level = closings.before(day, ClassLevel.key(unit)).or(() -> closings.before(day, ClassLevel.ALL))
                .map(ClassLevel::of).orElse(ClassLevel.UNSEEN);
        TechnicianOffset offset = visit.technician().isEmpty() ? TechnicianOffset.UNKNOWN
                : closings.before(day, TechnicianOffset.key(visit)).map(TechnicianOffset::of).orElse(TechnicianOffset.UNKNOWN);
        FleetSlopes slopes = closings.before(day, FleetSlopes.KEY).map(FleetSlopes::of).orElse(FleetSlopes.FLAT);
        return new Known(level, offset, slopes, closings.lastBefore(day));
    }
}
