package org.longsummer.store;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.Query;
import org.longsummer.access.Reach;
import org.longsummer.chain.Method;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.store.FleetUnit.Duty;
import org.longsummer.store.YardPage.After;

/** How the units stand: one row a unit, kept in step with its visits. */
public final class Standings {
    /** Units that are held in memory at most while many are gone through. */
    private static final int AT_ONCE = 500;
    private static final String DESCRIBE = """
            insert into standing (unit_id, depot, label, search_text, in_service, duty, installed_on, warranty_until, state_rank, p_impact,
            last_to_retake, visit_count, judged_by)
            values (:unit, :depot, :label, :search, :in_service, :duty, :installed, :warranty, :rank, 0, 0, 0, :method)
            on conflict (unit_id) do update set depot = excluded.depot, label = excluded.label, search_text = excluded.search_text,
            in_service = excluded.in_service, duty = excluded.duty, installed_on = excluded.installed_on,
            warranty_until = excluded.warranty_until""";
    /** A search that finds so few goes through the whole table, rather than look up each row of an index until a page is full. */
    private static final int FEW_FOUND = 500;
    private static final String FROM = " from standing s join unit u on u.id = s.unit_id";

    private final Jdbi reader;
    private final KeptAnswers kept;
    private final BlockCounts blocks = new BlockCounts();

    Standings(Jdbi reader, KeptAnswers kept) {
        this.reader = reader;
        this.kept = kept;
    }

    public Optional<Standing> ofUnit(String unitId) {
        return reader.withHandle(handle -> handle.createQuery("select " + StandingRow.COLUMNS + FROM + " where s.unit_id = :unit")
                .bind("unit", unitId).map(StandingRow::read).findOne());
    }

    /**
     * One page of the yard: ids by an index alone, then the rows of those.
     *
     * @param after behind which row it goes on; empty for the first page
     * @param limit rows to list at most
     */
    public YardPage page(YardFilter filter, YardOrder order, Optional<After> after, int limit) {
        YardNarrowing narrowing = new YardNarrowing(filter);
        boolean few = narrowing.isSearch() && count(filter) < FEW_FOUND;
        String ids = ids(narrowing, order, few ? "not indexed" : "indexed by " + narrowing.index(order), after.isPresent());
        List<Placed> placed = reader.withHandle(handle -> {
            Query query = handle.createQuery("select " + StandingRow.COLUMNS + ", k.at from (" + ids + ") k join standing s on s.unit_id = k.unit_id"
                    + " join unit u on u.id = s.unit_id order by k.at, k.unit_id").bindMap(narrowing.values()).bind("limit", limit + 1);
            after.ifPresent(row -> query.bind("after_value", order.value(row.value())).bind("after_unit", row.unitId()));
            return query.map((row, context) -> new Placed(StandingRow.read(row, context), row.getString("at"))).list();
        });
        List<Standing> rows = placed.stream().limit(limit).map(Placed::standing).toList();
        return new YardPage(rows, placed.size() <= limit ? Optional.empty()
                : Optional.of(new After(placed.get(limit - 1).at(), rows.get(limit - 1).unitId())));
    }

    /** The ids of a page's units and the value that orders them. */
    static String ids(YardNarrowing narrowing, YardOrder order, String by, boolean goesOn) {
        return "select s.unit_id, s.%1$s as at from standing s %2$s%3$s%4$s order by s.%1$s, s.unit_id limit :limit"
                .formatted(order.column(), by, narrowing.where(),
                        goesOn ? " and (s.%s, s.unit_id) > (:after_value, :after_unit)".formatted(order.column()) : "");
    }

    private record Placed(Standing standing, String at) {}

    /** Hands over all units that a filter lets through, in order, some at a time. */
    public void forEach(YardFilter filter, YardOrder order, Consumer<Standing> consumer) {
        Optional<After> after = Optional.empty();
        do {
            YardPage page = page(filter, order, after, AT_ONCE);
            page.rows().forEach(consumer);
            after = page.next();
        } while (after.isPresent());
    }

    /** These units, those that are there and that somebody may see, in this order. */
    public List<Standing> ofUnits(List<String> unitIds, Reach reach) {
        ReachCondition seen = new ReachCondition(reach);
        Map<String, Standing> found = new HashMap<>();
        for (List<String> some : Parts.of(unitIds, AT_ONCE)) {
            reader.withHandle(handle -> handle.createQuery("select " + StandingRow.COLUMNS + FROM + " where s.unit_id in (<units>) and "
                    + seen.on("s.depot")).bindList("units", some).bindMap(seen.values()).map(StandingRow::read).list())
                    .forEach(standing -> found.put(standing.unitId(), standing));
        }
        return unitIds.stream().distinct().map(found::get).filter(Objects::nonNull).toList();
    }

    /** How many units a filter lets through. */
    public int count(YardFilter filter) {
        return kept.of(filter, () -> counted(filter));
    }

    private int counted(YardFilter filter) {
        BlockCounts.Question question = new BlockCounts.Question("count(*)", 1, new YardNarrowing(filter), query -> query);
        return reader.inTransaction(handle -> blocks.of(handle, filter, question))[0];
    }

    /**
     * The numbers for the sentences above the yard.
     *
     * @param filter narrows all of them
     * @param days the days that some of them count from
     */
    public YardCounts counts(YardFilter filter, YardDays days) {
        return kept.of(List.of(filter, days), () -> counted(filter, days));
    }

    private YardCounts counted(YardFilter filter, YardDays days) {
        int[] numbers = reader.inTransaction(handle -> blocks.of(handle, List.of(filter, days), days.question(new YardNarrowing(filter))));
        return YardDays.counts(numbers, count(filter.of(Duty.OUT_OF_SERVICE)), count(filter.of(Duty.SOLD)));
    }

    /** Writes what a unit's own row says; keeps what its visits say. */
    static void describe(Handle handle, Collection<FleetUnit> units) {
        try (StatementRows rows = new StatementRows(handle, DESCRIBE)) {
            units.forEach(unit -> describe(rows, unit));
            rows.execute();
        }
    }

    private static void describe(Rows rows, FleetUnit unit) {
        rows.bind("unit", unit.id()).bind("depot", unit.unit().site().isEmpty() ? null : unit.unit().site())
                .bind("label", unit.unit().label()).bind("search", unit.searchText())
                .bind("in_service", unit.duty() == FleetUnit.Duty.IN_SERVICE ? 1 : 0)
                .bind("duty", Column.word(unit.duty(), null)).bind("installed", unit.unit().installedOn().map(Object::toString))
                .bind("warranty", unit.warrantyUntil().map(Object::toString))
                .bind("rank", StandingRow.NEVER_JUDGED).bind("method", Method.NUMBER).add();
    }

    /** Writes what the visits of some units say. */
    static void judge(Handle handle, Map<String, List<Verdict>> verdictsByUnit) {
        try (StatementRows rows = new StatementRows(handle, StandingRow.UPDATE_JUDGED)) {
            verdictsByUnit.forEach((unitId, verdicts) -> StandingRow.bindJudged(rows, unitId, verdicts).add());
            rows.execute();
        }
    }

    /** Writes what the visits of a unit say, with its advice. */
    static void judge(Handle handle, JudgedUnit judged) {
        try (StatementRows rows = new StatementRows(handle, StandingRow.UPDATE_JUDGED_AND_ADVISED)) {
            StandingRow.bindJudged(rows, judged.unit().id(), judged.verdicts());
            AdviceColumns.bind(rows, judged.advised()).add();
            rows.execute();
        }
    }
}
