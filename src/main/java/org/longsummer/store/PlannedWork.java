package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;

/**
 * Work that is planned for a unit.
 *
 * @param id its identifier
 * @param unitId the unit
 * @param works what is to be done
 * @param plannedFor by when
 * @param price all-in, where known
 * @param note anything else; empty when nothing
 * @param plannedBy who planned it
 * @param plannedAt when
 * @param ended what became of it; absent while it is to be done
 */
public record PlannedWork(String id, String unitId, List<Work> works, LocalDate plannedFor, Optional<Money> price, String note,
        String plannedBy, Instant plannedAt, Optional<Ended> ended) {
    public PlannedWork {
        works = List.copyOf(works);
        if (works.isEmpty()) {
            throw new IllegalArgumentException("planned work: no work given; give one or more");
        }
    }

    /**
     * What became of it.
     *
     * @param as done or dropped
     * @param by who said so
     * @param at when
     */
    public record Ended(As as, String by, Instant at) {}

    /** How planned work ends. */
    public enum As { DONE, DROPPED }
}
