package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.store.UnitChange.Because;
import org.longsummer.store.UnitChange.Kind;

/** What became of the units, in order. It only grows; {@link Fleet} is where units are changed. */
public final class UnitChanges {
    private static final String SELECT = """
            select unit_id, kind, happened_on, recorded_at_ms, recorded_by, reason, other_unit_id, before_fields, after_fields
            from unit_change\s""";

    private final Jdbi reader;

    UnitChanges(Jdbi reader) {
        this.reader = reader;
    }

    /** Of one unit, in the order in which they were recorded. */
    public List<UnitChange> ofUnit(String unitId) {
        return reader.withHandle(handle -> handle.createQuery(SELECT + "where unit_id = :unit order by id").bind("unit", unitId)
                .map(UnitChanges::read).list());
    }

    /** Hands over all of them in order, one by one. */
    public void forEach(Consumer<UnitChange> consumer) {
        reader.useHandle(handle -> handle.createQuery(SELECT + "order by id").map(UnitChanges::read)
                .useStream(rows -> rows.forEach(consumer)));
    }

    /** Appends those that are not there yet; a change brought in again is the same when all of it is. */
    static void append(Handle handle, Collection<UnitChange> changes) {
        if (changes.isEmpty()) {
            return;
        }
        PreparedBatch batch = handle.prepareBatch("""
                insert into unit_change (id, unit_id, kind, happened_on, recorded_at_ms, recorded_by, reason, other_unit_id, before_fields,
                after_fields) values ((select coalesce(max(id), 0) + 1 from unit_change), :unit, :kind, :on, :at, :by, :reason, :other,
                :before, :after)""");
        for (UnitChange change : changes) {
            batch.bind("unit", change.unitId()).bind("kind", Column.word(change.kind(), null)).bind("on", change.because().on().toString())
                    .bind("at", change.recordedAt().toEpochMilli()).bind("by", change.because().by())
                    .bind("reason", change.because().reason()).bind("other", change.otherUnitId())
                    .bind("before", lines(change.before())).bind("after", lines(change.after())).add();
        }
        batch.execute();
    }

    /** What a file says otherwise of a unit is recorded like what a person changes. */
    static void note(Handle handle, FleetUnit old, FleetUnit unit, Instant at) {
        UnitFields.Difference difference = UnitFields.Difference.between(old, unit);
        if (difference.isNone()) {
            return;
        }
        boolean moved = difference.after().keySet().stream().anyMatch(List.of("site", "vehicle", "position")::contains);
        String by = handle.createQuery("select who from acting").mapTo(String.class).findOne().orElse("");
        Because because = new Because(by, at.atOffset(ZoneOffset.UTC).toLocalDate(), "as a file says");
        append(handle, List.of(new UnitChange(unit.id(), moved ? Kind.MOVED : Kind.EDITED, because, at.truncatedTo(ChronoUnit.MILLIS),
                Optional.empty(), difference.before(), difference.after())));
    }

    static boolean isThere(Handle handle, UnitChange change) {
        return handle.createQuery(SELECT + "where unit_id = :unit and recorded_at_ms = :at").bind("unit", change.unitId())
                .bind("at", change.recordedAt().toEpochMilli()).map(UnitChanges::read).list().contains(change);
    }

    private static UnitChange read(ResultSet row, StatementContext context) throws SQLException {
        return new UnitChange(row.getString("unit_id"), Kind.valueOf(row.getString("kind").toUpperCase(Locale.ROOT)),
                new Because(row.getString("recorded_by"), LocalDate.parse(row.getString("happened_on")), row.getString("reason")),
                Instant.ofEpochMilli(row.getLong("recorded_at_ms")), Column.text(row, "other_unit_id"),
                fields(row.getString("before_fields")), fields(row.getString("after_fields")));
    }

    /** One line a field: its name, a space, its text. */
    static String lines(Map<String, String> fields) {
        StringBuilder lines = new StringBuilder();
        fields.forEach((name, text) -> lines.append(name).append(' ').append(text.replaceAll("\\R", " ")).append('\n'));
        return lines.toString();
    }

    static Map<String, String> fields(String lines) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String line : lines.split("\n")) {
            int space = line.indexOf(' ');
            if (space > 0) {
                fields.put(line.substring(0, space), line.substring(space + 1));
            }
        }
        return fields;
    }
}
