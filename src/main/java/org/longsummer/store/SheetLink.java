package org.longsummer.store;

import java.time.Instant;
import java.util.Optional;

/**
 * A link by which an owner sees the sheet of one unit, and nothing else.
 *
 * @param id by which it is listed and withdrawn; it opens nothing
 * @param unitId the unit
 * @param madeBy who handed it out
 * @param made when
 * @param ends when it ends by itself
 * @param withdrawn when it was withdrawn
 */
public record SheetLink(String id, String unitId, String madeBy, Instant made, Instant ends, Optional<Instant> withdrawn) {
    public boolean isAlive(Instant now) {
        return withdrawn.isEmpty() && now.isBefore(ends);
    }
}
