package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.quantity.Money;
import org.longsummer.store.PlannedWork.As;

/** Work that is planned: what, for which unit, by when, at what price. */
public final class Plans {
    private static final String PLANNED = """
            select p.id, p.unit_id, p.works, p.planned_for, p.price_minor, p.currency, p.note, p.planned_by, p.planned_at_ms, p.ended_as,
            p.ended_by, p.ended_at_ms from planned_work p\s""";

    private final Jdbi reader;
    private final Jdbi writer;
    private final Clock clock;

    Plans(Jdbi reader, Jdbi writer, Clock clock) {
        this.reader = reader;
        this.writer = writer;
        this.clock = clock;
    }

    /** Adds a plan; the unit must be there. The same id twice is one plan. */
    public void add(PlannedWork plan) {
        add(List.of(plan));
    }

    /** Adds plans, all or none; their units must be there. The same id twice is one plan. */
    public void add(List<PlannedWork> plans) {
        writer.useTransaction(handle -> {
            PreparedBatch batch = handle.prepareBatch("""
                    insert into planned_work (id, unit_id, works, planned_for, price_minor, currency, note, planned_by, planned_at_ms)
                    values (:id, :unit, :works, :day, :price, :currency, :note, :by, :at) on conflict (id) do nothing""");
            for (PlannedWork plan : plans) {
                batch.bind("id", plan.id()).bind("unit", plan.unitId())
                        .bind("works", WorksColumn.text(plan.works()))
                        .bind("day", plan.plannedFor().toString()).bind("price", plan.price().map(Money::minor))
                        .bind("currency", plan.price().map(Money::currency)).bind("note", plan.note()).bind("by", plan.plannedBy())
                        .bind("at", plan.plannedAt().toEpochMilli()).add();
            }
            batch.execute();
        });
    }

    /** All plans, also those that ended. */
    public List<PlannedWork> all() {
        return reader.withHandle(handle -> handle.createQuery(PLANNED + "order by p.planned_for, p.id").map(Plans::row).list());
    }

    /** Adds a plan, or takes over what is given otherwise of one that is there, with how it ended. */
    static void put(Handle handle, PlannedWork plan) {
        Optional<PlannedWork.Ended> ended = plan.ended();
        handle.createUpdate("""
                insert into planned_work (id, unit_id, works, planned_for, price_minor, currency, note, planned_by, planned_at_ms, ended_as,
                ended_by, ended_at_ms) values (:id, :unit, :works, :day, :price, :currency, :note, :by, :at, :endedAs, :endedBy, :endedAt)
                on conflict (id) do update set unit_id = excluded.unit_id, works = excluded.works, planned_for = excluded.planned_for,
                price_minor = excluded.price_minor, currency = excluded.currency, note = excluded.note, planned_by = excluded.planned_by,
                planned_at_ms = excluded.planned_at_ms, ended_as = excluded.ended_as, ended_by = excluded.ended_by,
                ended_at_ms = excluded.ended_at_ms""")
                .bind("id", plan.id()).bind("unit", plan.unitId()).bind("works", WorksColumn.text(plan.works())).bind("day", plan.plannedFor().toString())
                .bind("price", plan.price().map(Money::minor)).bind("currency", plan.price().map(Money::currency)).bind("note", plan.note())
                .bind("by", plan.plannedBy()).bind("at", plan.plannedAt().toEpochMilli())
                .bind("endedAs", ended.map(end -> Column.word(end.as(), null))).bind("endedBy", ended.map(PlannedWork.Ended::by))
                .bind("endedAt", ended.map(end -> end.at().toEpochMilli())).execute();
    }

    static Optional<PlannedWork> find(Handle handle, String id) {
        return handle.createQuery(PLANNED + "where p.id = :id").bind("id", id).map(Plans::row).findOne();
    }

    public Optional<PlannedWork> find(String id) {
        return reader.withHandle(handle -> handle.createQuery(PLANNED + "where p.id = :id").bind("id", id).map(Plans::row).findOne());
    }

    /** What is still to be done on a unit, soonest first. */
    public List<PlannedWork> toDo(String unitId) {
        return reader.withHandle(handle -> handle.createQuery(PLANNED + "where p.unit_id = :unit and p.ended_as is null order by p.planned_for, p.id")
                .bind("unit", unitId).map(Plans::row).list());
    }

    /** What is still to be done at a depot, or everywhere, soonest first. */
    public List<PlannedWork> toDo(Optional<String> depot) {
        return reader.withHandle(handle -> handle.createQuery(PLANNED + """
                join unit u on u.id = p.unit_id where p.ended_as is null and (:depot is null or u.depot = :depot)
                order by p.planned_for, p.id""").bind("depot", depot).map(Plans::row).list());
    }

    /**
     * Ends a plan.
     *
     * @return false when there is none to end
     */
    public boolean end(String id, As as, String by) {
        return writer.inTransaction(handle -> handle.createUpdate("""
                update planned_work set ended_as = :as, ended_by = :by, ended_at_ms = :at where id = :id and ended_as is null""")
                .bind("as", Column.word(as, null)).bind("by", by).bind("at", clock.instant().toEpochMilli()).bind("id", id).execute()) == 1;
    }

    private static PlannedWork row(ResultSet row, StatementContext context) throws SQLException {
        String currency = row.getString("currency");
        long price = row.getLong("price_minor");
        As ended = Column.choice(row, "ended_as", As.class, null);
        return new PlannedWork(row.getString("id"), row.getString("unit_id"), WorksColumn.works(row.getString("works")),
                LocalDate.parse(row.getString("planned_for")), currency == null ? Optional.empty() : Optional.of(new Money(price, currency)),
                row.getString("note"), row.getString("planned_by"), Column.moment(row, "planned_at_ms").orElseThrow(),
                ended == null ? Optional.empty()
                        : Optional.of(new PlannedWork.Ended(ended, row.getString("ended_by"), Column.moment(row, "ended_at_ms").orElseThrow())));
    }
}
