package org.longsummer.store;

import org.jdbi.v3.core.Handle;
import org.longsummer.chain.visit.Visit;

/**
 * All that saving a visit rests on and that others may change, told from how far the append-only parts of the record have grown: the journal has
 * a line for each change of a unit, a depot, a price or a quote.
 *
 * @param generation of the closings
 * @param closedThrough the last UTC day that was closed; null when none was
 * @param journal number of its last line
 * @param idTaken a visit of its id is stored
 * @param visits rows of its unit
 * @param withdrawals of them
 */
record VisitBasis(String generation, String closedThrough, long journal, boolean idTaken, int visits, int withdrawals) {

    static VisitBasis of(Handle handle, Visit visit) {
        return handle.createQuery("""
                select (select content from setting where name = 'generation') as generation,
                (select content from setting where name = 'closed_through') as closed_through,
                (select max(id) from journal) as journal, exists (select 1 from visit where id = :id) as taken, (select count(*) from visit where unit_id = :unit) as visits,
                (select count(*) from visit v join withdrawal w on w.visit_id = v.id where v.unit_id = :unit) as withdrawals""")
                .bind("unit", visit.unitId()).bind("id", visit.id()).map((row, context) -> new VisitBasis(row.getString("generation"), row.getString("closed_through"),
                        row.getLong("journal"), row.getBoolean("taken"), row.getInt("visits"), row.getInt("withdrawals"))).one();
    }
}
