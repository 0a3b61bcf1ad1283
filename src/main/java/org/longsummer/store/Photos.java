package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.StatementContext;

/** The photos of visits. */
public final class Photos {
    private static final String SELECT = """
            select p.id, p.visit_id, p.subject, p.content_type, p.received_at_ms, p.saved_by, p.removed_by, p.removed_at_ms, p.removal_reason
            from photo p\s""";

    private final Jdbi reader;
    private final Jdbi writer;
    private final Clock clock;

    Photos(Jdbi reader, Jdbi writer, Clock clock) {
        this.reader = reader;
        this.writer = writer;
        this.clock = clock;
    }

    /** What became of a photo that was handed over. */
    public enum Adding { STORED, ALREADY_STORED, UNKNOWN_VISIT, TOO_MANY }

    /** So many a visit. */
    public static final int MOST = 24;

    /** Stores a photo; once this returns {@link Adding#STORED}, it is on disk. */
    public Adding add(String id, String visitId, Photo.Subject subject, String contentType, byte[] bytes, String savedBy) {
        return writer.inTransaction(handle -> {
            if (find(handle, id).isPresent()) {
                return Adding.ALREADY_STORED;
            }
            if (Visits.find(handle, visitId).isEmpty()) {
                return Adding.UNKNOWN_VISIT;
            }
            if (handle.createQuery("select count(*) from photo where visit_id = :visit").bind("visit", visitId).mapTo(Integer.class).one() >= MOST) {
                return Adding.TOO_MANY;
            }
            append(handle, new Photo(id, visitId, subject, contentType, now(), savedBy, Optional.empty()), bytes);
            return Adding.STORED;
        });
    }

    static void append(Handle handle, Photo photo, byte[] bytes) {
        handle.createUpdate("""
                insert into photo (id, visit_id, subject, content_type, received_at_ms, saved_by, bytes)
                values (:id, :visit, :subject, :type, :at, :by, :bytes)""")
                .bind("id", photo.id()).bind("visit", photo.visitId()).bind("subject", Column.word(photo.subject(), null))
                .bind("type", photo.contentType()).bind("at", photo.receivedAt().toEpochMilli()).bind("by", photo.savedBy())
                .bind("bytes", bytes).execute();
    }

    public Optional<Photo> find(String id) {
        return reader.withHandle(handle -> find(handle, id));
    }

    static Optional<Photo> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "where p.id = :id").bind("id", id).map(Photos::read).findOne();
    }

    /** Of all visits of a unit, latest first. */
    public List<Photo> ofUnit(String unitId) {
        return reader.withHandle(handle -> handle.createQuery(SELECT + """
                join visit v on v.id = p.visit_id where v.unit_id = :unit order by v.visited_at_ms desc, p.received_at_ms, p.id""")
                .bind("unit", unitId).map(Photos::read).list());
    }

    /** Hands over all photos, one by one. */
    public void forEach(Consumer<Photo> consumer) {
        reader.useHandle(handle -> handle.createQuery(SELECT + "order by p.received_at_ms, p.id").map(Photos::read)
                .useStream(rows -> rows.forEach(consumer)));
    }

    /** The bytes of a photo; empty when there is none of this id, or they were taken out. */
    public Optional<byte[]> bytes(String id) {
        return reader.withHandle(handle -> handle.createQuery("select bytes from photo where id = :id and bytes is not null").bind("id", id)
                .mapTo(byte[].class).findOne());
    }

    /** Takes a photo's bytes out; its row stays and says who and why. False when there is nothing to take out. */
    public boolean remove(String id, String by, String reason) {
        return writer.inTransaction(handle -> handle.createUpdate("""
                update photo set bytes = null, removed_by = :by, removed_at_ms = :at, removal_reason = :reason
                where id = :id and bytes is not null""")
                .bind("id", id).bind("by", by).bind("at", now().toEpochMilli()).bind("reason", reason).execute() > 0);
    }

    /** Photos go with their visit when another row takes its place. */
    static void follow(Handle handle, String visitId, String newVisitId) {
        handle.createUpdate("update photo set visit_id = :new where visit_id = :old").bind("new", newVisitId).bind("old", visitId).execute();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    private static Photo read(ResultSet row, StatementContext context) throws SQLException {
        Optional<Withdrawal> removal = Column.text(row, "removed_by").isEmpty() ? Optional.empty()
                : Optional.of(new Withdrawal(row.getString("removed_by"), Instant.ofEpochMilli(row.getLong("removed_at_ms")),
                        row.getString("removal_reason")));
        return new Photo(row.getString("id"), row.getString("visit_id"), Column.choice(row, "subject", Photo.Subject.class, null),
                row.getString("content_type"), Instant.ofEpochMilli(row.getLong("received_at_ms")), row.getString("saved_by"), removal);
    }
}
