package org.longsummer.store;

import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.longsummer.chain.visit.Visit;

/**
 * A visit as it is handed over to be saved.
 *
 * @param visit its id is given by whoever made it, so that handing it over twice stores it once
 * @param typed what was typed
 * @param savedBy who hands it over; empty when nobody is signed in
 * @param correction set when it takes the place of an earlier one
 */
public record Entry(Visit visit, Typed typed, String savedBy, Optional<Correction> correction) {

    /** A new visit, not a correction. */
    public static Entry of(Visit visit, Typed typed, String savedBy) {
        return new Entry(visit, typed, savedBy, Optional.empty());
    }

    /** The same, handed over by somebody else. */
    public Entry savedBy(String name) {
        return new Entry(visit, typed, name, correction);
    }

    /** Whoever hands it over the second time may be somebody else, and may have it from a list of what counts, without what it corrected. */
    public boolean hasSameContentAs(Entry other) {
        return visit.equals(other.visit) && typed.equals(other.typed) && (correction.equals(other.correction) || other.correction.isEmpty());
    }

    /** With its moment as exact as it can be stored. */
    public Entry toMilliseconds() {
        Visit exact = new Visit(visit.id(), visit.unitId(), visit.at().truncatedTo(ChronoUnit.MILLIS), visit.offset(),
                visit.technician(), visit.instruments(), visit.readings(), visit.fanSpeed(), visit.powerSource(), visit.filter(),
                visit.coil(), visit.icedCoil(), visit.workDone(), visit.notes());
        return new Entry(exact, typed, savedBy, correction);
    }
}
