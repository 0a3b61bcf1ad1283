package org.longsummer.store;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * All that the verdicts and the advice of some units rest on and that others may change, told from how far the append-only parts of the record
 * have grown: the journal has a line for each change of a unit, a depot, a price or a quote.
 *
 * @param generation of the closings
 * @param closedThrough the last UTC day that was closed
 * @param journal number of its last line
 * @param visits rows of the units
 * @param withdrawals of them
 */
record UnitsBasis(int generation, Optional<LocalDate> closedThrough, long journal, int visits, int withdrawals) {

    static UnitsBasis of(Handle handle, Collection<String> unitIds) {
        return handle.createQuery("""
                select (select content from setting where name = 'generation') as generation,
                (select content from setting where name = 'closed_through') as closed_through,
                (select max(id) from journal) as journal, (select count(*) from visit where unit_id in (<units>)) as visits,
                (select count(*) from visit v join withdrawal w on w.visit_id = v.id where v.unit_id in (<units>)) as withdrawals""")
                .bindList("units", List.copyOf(unitIds)).map((row, context) -> new UnitsBasis(
                        LearnedLevels.generation(Column.text(row, "generation")), Column.day(row, "closed_through"), row.getLong("journal"),
                        row.getInt("visits"), row.getInt("withdrawals"))).one();
    }
}
