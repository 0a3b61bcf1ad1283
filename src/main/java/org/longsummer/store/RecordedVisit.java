package org.longsummer.store;

import java.time.Instant;
import java.util.Optional;
import org.longsummer.chain.visit.Visit;

/**
 * A row of the record with its marking.
 *
 * @param entry the visit and what was typed, as handed over
 * @param receivedAt when the store received it
 * @param correctedBy the visit that took its place
 * @param withdrawal set when it was withdrawn
 */
public record RecordedVisit(Entry entry, Instant receivedAt, Optional<String> correctedBy, Optional<Withdrawal> withdrawal) {

    public Visit visit() {
        return entry.visit();
    }

    /** It is judged and shown; otherwise it is only kept. */
    public boolean counts() {
        return correctedBy.isEmpty() && withdrawal.isEmpty();
    }
}
