package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * What became of a unit's own row. The list of them only grows.
 *
 * @param unitId the unit
 * @param kind what happened
 * @param because by whom, when and why
 * @param recordedAt when the store was told
 * @param otherUnitId the other unit of a swap or a replacement, or the one that a visit went to or came from
 * @param before what fields said before, by their names in CSV files; those that changed only
 * @param after what the same fields say since
 */
public record UnitChange(String unitId, Kind kind, Because because, Instant recordedAt, Optional<String> otherUnitId,
        Map<String, String> before, Map<String, String> after) {

    /** What happened to a unit. */
    public enum Kind {
        ADDED,
        /** Plate, name, owner or the like was corrected or completed. */
        EDITED,
        /** The machine went to another vehicle, place on the roof or depot. */
        MOVED,
        /** Two machines stood in the record each in the other's place, or changed places; the machines keep their visits. */
        PLACES_SWAPPED,
        /** Two plates stood in the record each on the other's unit; the units keep their visits. */
        PLATES_SWAPPED,
        /** Another machine took its place. */
        REPLACED,
        /** It took the place of another machine. */
        TOOK_PLACE,
        /** Laid up, sold, or back in service. */
        DUTY,
        /** A visit recorded here was another unit's and went there. */
        VISIT_GIVEN,
        /** A visit recorded on another unit was this one's. */
        VISIT_TAKEN
    }

    /**
     * Why something was changed.
     *
     * @param by who says so
     * @param on the day on which it happened
     * @param reason why; empty when nobody said
     */
    public record Because(String by, LocalDate on, String reason) {}
}
