package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.visit.Visit;

/**
 * A row of the record with its marking.
 *
 * @param entry the visit and what was typed, as handed over
 * @param receivedAt when the store received it
 * @param closesOn the UTC day at whose closing it is learned from: its own, or the first not yet closed when it came late
 * @param correctedBy the visit that took its place
 * @param withdrawal set when it was withdrawn
 */
public record RecordedVisit(Entry entry, Instant receivedAt, LocalDate closesOn, Optional<String> correctedBy,
        Optional<Withdrawal> withdrawal) {

    public Visit visit() {
        return entry.visit();
    }

    /** It is judged and shown; otherwise it is only kept. */
    public boolean counts() {
        return correctedBy.isEmpty() && withdrawal.isEmpty();
    }
}
