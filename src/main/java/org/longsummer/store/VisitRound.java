package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;

/**
 * A list of units to visit on a day, in walking order.
 *
 * @param id its identifier
 * @param title what people call it; empty when nothing
 * @param forDay the day
 * @param madeBy who made it
 * @param madeAt when
 */
public record VisitRound(String id, String title, LocalDate forDay, String madeBy, Instant madeAt) {

    /**
     * One unit of it.
     *
     * @param unitId the unit
     * @param visitId the id that its visit gets, however often it is sent
     * @param row of the depot in which its vehicle stands; empty where nobody said so
     * @param place in that row
     * @param visited a visit of that id is stored
     */
    public record Stop(String unitId, String visitId, String row, String place, boolean visited) {}

    /** A round in a list of them. */
    public record Brief(VisitRound round, int stops, int visited) {}
}
