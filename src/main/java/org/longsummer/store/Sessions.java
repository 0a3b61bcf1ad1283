package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.access.Person;
import org.longsummer.access.Secret;

/** Who is signed in where. A session is a row: when it is gone, so is whatever it opened. */
public final class Sessions {
    /** Of one person; the one unused for longest makes room. */
    public static final int MOST_OF_ONE_PERSON = 20;
    private static final String COLUMNS = "s.id, s.person_id, s.kind, s.label, s.began_at_ms, s.used_at_ms";

    private final Jdbi reader;
    private final Jdbi writer;
    private final Clock clock;
    private final Uses uses;

    Sessions(Jdbi reader, Jdbi writer, Clock clock, Uses uses) {
        this.reader = reader;
        this.writer = writer;
        this.clock = clock;
        this.uses = uses;
    }

    /** A session and whose it is. */
    public record Opened(Session session, Person person) {}

    /** Begins a session with a new secret; what the browser may have sent before plays no part. */
    public Secret begin(Person person, Session.Kind kind, String label) {
        Secret secret = Secret.make();
        long now = clock.instant().toEpochMilli();
        writer.useTransaction(handle -> {
            makeRoom(handle, person.id());
            handle.createUpdate("""
                    insert into session (id, secret_hash, person_id, kind, label, began_at_ms, used_at_ms)
                    values (:id, :hash, :person, :kind, :label, :now, :now)""")
                    .bind("id", Secret.id("s")).bind("hash", secret.hash()).bind("person", person.id()).bind("kind", kind.word())
                    .bind("label", label).bind("now", now).execute();
            Journal.note(handle, "session", person.id(), "signed in: " + kind.word());
        });
        return secret;
    }

    private void makeRoom(Handle handle, String personId) {
        ofPerson(handle, personId).stream().filter(session -> !session.isAlive(clock.instant())).forEach(session -> delete(handle, session.id()));
        List<Session> living = ofPerson(handle, personId);
        living.subList(Math.min(living.size(), MOST_OF_ONE_PERSON - 1), living.size()).forEach(session -> delete(handle, session.id()));
    }

    /** The living session of a secret, with its person as he is at this moment; its use is noted. */
    public Optional<Opened> open(Secret secret) {
        Instant now = clock.instant();
        Optional<Opened> opened = reader.withHandle(handle -> handle.createQuery("select " + COLUMNS + ", "
                + People.OTHER_COLUMNS + """
                 from session s join person p on p.id = s.person_id where s.secret_hash = :hash and p.active = 1""")
                .bind("hash", secret.hash()).map(this::opened).findOne()).filter(found -> found.session().isAlive(now));
        opened.map(Opened::session).ifPresent(session -> uses.note(session.id(), session.used(), now, () -> used(session.id(), now)));
        return opened;
    }

    private void used(String id, Instant now) {
        writer.useTransaction(handle -> handle.createUpdate("update session set used_at_ms = :now where id = :id")
                .bind("now", now.toEpochMilli()).bind("id", id).execute());
    }

    /** The living sessions of somebody, last used first. */
    public List<Session> ofPerson(String personId) {
        Instant now = clock.instant();
        return reader.withHandle(handle -> ofPerson(handle, personId)).stream().filter(session -> session.isAlive(now)).toList();
    }

    private List<Session> ofPerson(Handle handle, String personId) {
        return handle.createQuery("select " + COLUMNS + " from session s where s.person_id = :person order by s.used_at_ms desc, s.id")
                .bind("person", personId).map(this::session).list();
    }

    /**
     * Ends one session of somebody.
     *
     * @return whether there was one
     */
    public boolean end(String personId, String sessionId) {
        return writer.inTransaction(handle -> {
            boolean there = ofPerson(handle, personId).stream().anyMatch(session -> session.id().equals(sessionId));
            if (there) {
                delete(handle, sessionId);
                Journal.note(handle, "session", personId, "session ended");
            }
            return there;
        });
    }

    /** Ends all sessions and phones of somebody. */
    public void endAll(String personId) {
        writer.useTransaction(handle -> {
            endAll(handle, personId, Optional.empty());
            Journal.note(handle, "session", personId, "all sessions and phones ended");
        });
    }

    static void endAll(Handle handle, String personId, Optional<String> exceptSession) {
        handle.createUpdate("delete from session where person_id = :person and id <> :except").bind("person", personId)
                .bind("except", exceptSession.orElse("")).execute();
    }

    private void delete(Handle handle, String id) {
        handle.createUpdate("delete from session where id = :id").bind("id", id).execute();
        uses.forget(id);
    }

    private Opened opened(ResultSet row, StatementContext context) throws SQLException {
        Session session = session(row, context);
        return new Opened(session, People.person(row, session.personId()));
    }

    private Session session(ResultSet row, StatementContext context) throws SQLException {
        String id = row.getString("id");
        return new Session(id, row.getString("person_id"), Column.choice(row, "kind", Session.Kind.class, null), row.getString("label"),
                Instant.ofEpochMilli(row.getLong("began_at_ms")), uses.latest(id, Instant.ofEpochMilli(row.getLong("used_at_ms"))));
    }
}
