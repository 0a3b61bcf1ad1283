package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.StatementContext;

/** Who changed what, when, and what was before. It only grows; nothing here can change a line. */
public final class Journal {
    private static final String LINES = """
            select id, at_ms, who, way, about, about_id, unit_id, event, before_json, after_json from journal\s""";

    private final Jdbi reader;
    private final Jdbi writer;

    Journal(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
    }

    /** The last lines, latest first. */
    public List<JournalLine> page(int offset, int limit) {
        return reader.withHandle(handle -> handle.createQuery(LINES + "order by id desc limit :limit offset :offset")
                .bind("limit", limit).bind("offset", offset).map(Journal::line).list());
    }

    public int count() {
        return reader.withHandle(handle -> handle.createQuery("select count(*) from journal").mapTo(Integer.class).one());
    }

    /** What was changed about a unit, latest first. */
    public List<JournalLine> ofUnit(String unitId, int limit) {
        return reader.withHandle(handle -> handle.createQuery(LINES + "where unit_id = :unit order by id desc limit :limit")
                .bind("unit", unitId).bind("limit", limit).map(Journal::line).list());
    }

    /** Writes that something happened that no table shows, such as a refused sign-in. */
    public void note(String about, String aboutId, String event) {
        writer.useTransaction(handle -> note(handle, about, aboutId, event));
    }

    static void note(Handle handle, String about, String aboutId, String event) {
        handle.createUpdate("""
                insert into journal (at_ms, who, person_id, way, about, about_id, event)
                select at_ms, who, person_id, way, :about, :id, :event from acting""")
                .bind("about", about).bind("id", aboutId).bind("event", event).execute();
    }

    private static JournalLine line(ResultSet row, StatementContext context) throws SQLException {
        return new JournalLine(row.getLong("id"), Instant.ofEpochMilli(row.getLong("at_ms")), row.getString("who"), row.getString("way"),
                row.getString("about"), row.getString("about_id"), Optional.ofNullable(row.getString("unit_id")), row.getString("event"),
                Optional.ofNullable(row.getString("before_json")), Optional.ofNullable(row.getString("after_json")));
    }
}
