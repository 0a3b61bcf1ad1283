package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The circumstances in which visits are received.
 *
 * @param at when
 * @param generation of the closings in force
 * @param closedThrough the last UTC day that was closed
 */
record Receipt(Instant at, int generation, Optional<LocalDate> closedThrough) {

    /** The same for what was received at another moment. */
    Receipt at(Instant otherMoment) {
        return new Receipt(otherMoment, generation, closedThrough);
    }

    /** The day at whose closing a visit is learned from: its own, or the first not yet closed when it comes late. */
    LocalDate closesOn(LocalDate day) {
        return isLate(day) ? closedThrough.orElseThrow().plusDays(1) : day;
    }

    boolean isLate(LocalDate day) {
        return closedThrough.filter(closed -> !day.isAfter(closed)).isPresent();
    }
}
