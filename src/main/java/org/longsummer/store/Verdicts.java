package org.longsummer.store;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.condition.Verdict;

/** What the visits that count were last judged to say. */
public final class Verdicts {
    private final Jdbi reader;

    Verdicts(Jdbi reader) {
        this.reader = reader;
    }

    /** The verdicts of a unit, in order of time. */
    public List<StoredVerdict> ofUnit(String unitId) {
        return reader.withHandle(handle -> handle
                .createQuery("select " + VerdictRow.COLUMNS + " from verdict where unit_id = :unit order by visited_at_ms, visit_id")
                .bind("unit", unitId).map(VerdictRow::read).list());
    }

    public Optional<StoredVerdict> ofVisit(String visitId) {
        return reader.withHandle(handle -> handle.createQuery("select " + VerdictRow.COLUMNS + " from verdict where visit_id = :visit")
                .bind("visit", visitId).map(VerdictRow::read).findOne());
    }

    /** Hands over all verdicts by unit and time, one by one. */
    public void forEach(Consumer<StoredVerdict> consumer) {
        reader.useHandle(handle -> handle
                .createQuery("select " + VerdictRow.COLUMNS + " from verdict order by unit_id, visited_at_ms, visit_id")
                .map(VerdictRow::read).useStream(verdicts -> verdicts.forEach(consumer)));
    }

    static void remove(Handle handle, Collection<String> unitIds) {
        if (!unitIds.isEmpty()) {
            handle.createUpdate("delete from verdict where unit_id in (<units>)").bindList("units", List.copyOf(unitIds)).execute();
        }
    }

    /** Takes the place of all verdicts of some units. */
    static void replace(Handle handle, Map<String, List<Verdict>> verdictsByUnit) {
        remove(handle, verdictsByUnit.keySet());
        try (StatementRows rows = new StatementRows(handle, VerdictRow.INSERT)) {
            verdictsByUnit.values().forEach(verdicts -> verdicts.forEach(verdict -> VerdictRow.bind(rows, verdict).add()));
            rows.execute();
        }
    }
}
