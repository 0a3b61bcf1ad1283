package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.access.Person;
import org.longsummer.access.Reach;
import org.longsummer.access.Right;
import org.longsummer.access.Secret;

/** The programs that may ask for somebody: named, limited, withdrawn. */
public final class Programs {
    private static final String COLUMNS = "t.id, t.person_id, t.name as program_name, t.most, t.depots as program_depots, t.made_at_ms, t.ends_at_ms, t.used_at_ms";

    private final Jdbi reader;
    private final Jdbi writer;
    private final Clock clock;
    private final Uses uses;

    Programs(Jdbi reader, Jdbi writer, Clock clock, Uses uses) {
        this.reader = reader;
        this.writer = writer;
        this.clock = clock;
        this.uses = uses;
    }

    /** A program and for whom it acts. */
    public record Opened(Program program, Person person) {}

    /** A new program's key, to be shown once. */
    public Secret make(String personId, String name, Right most, Reach reach, Duration lives) {
        Secret secret = Secret.make(Secret.OF_PROGRAM);
        Instant now = clock.instant();
        writer.useTransaction(handle -> handle.createUpdate("""
                insert into program (id, secret_hash, person_id, name, most, depots, made_at_ms, ends_at_ms)
                values (:id, :hash, :person, :name, :most, :depots, :now, :ends)""")
                .bind("id", Secret.id("k")).bind("hash", secret.hash()).bind("person", personId).bind("name", name)
                .bind("most", most.atMost(Right.LOOK_AFTER).word()).bind("depots", ReachColumn.write(reach))
                .bind("now", now.toEpochMilli()).bind("ends", now.plus(lives).toEpochMilli()).execute());
        return secret;
    }

    /** The living program of a key, with its person as he is at this moment. */
    public Optional<Opened> open(Secret secret) {
        Instant now = clock.instant();
        Optional<Opened> opened = reader.withHandle(handle -> handle.createQuery("select " + COLUMNS + ", "
                + People.OTHER_COLUMNS + """
                 from program t join person p on p.id = t.person_id
                where t.secret_hash = :hash and t.ends_at_ms > :now and p.active = 1""")
                .bind("hash", secret.hash()).bind("now", now.toEpochMilli())
                .map((row, context) -> new Opened(program(row, context), People.person(row, row.getString("person_id")))).findOne());
        opened.map(Opened::program).ifPresent(program -> uses.note(program.id(), program.used().orElse(Instant.MIN), now,
                () -> used(program.id(), now)));
        return opened;
    }

    private void used(String id, Instant now) {
        writer.useTransaction(handle -> handle.createUpdate("update program set used_at_ms = :now where id = :id")
                .bind("now", now.toEpochMilli()).bind("id", id).execute());
    }

    /** Somebody's programs, by name. */
    public List<Program> ofPerson(String personId) {
        return reader.withHandle(handle -> handle.createQuery("select " + COLUMNS + " from program t where t.person_id = :person order by t.name, t.id")
                .bind("person", personId).map(Programs::program).list());
    }

    /**
     * Withdraws a program's key.
     *
     * @return whether there was one
     */
    public boolean withdraw(String personId, String programId) {
        return writer.inTransaction(handle -> handle.createUpdate("delete from program where id = :id and person_id = :person")
                .bind("id", programId).bind("person", personId).execute()) == 1;
    }

    static void endAll(Handle handle, String personId) {
        handle.createUpdate("delete from program where person_id = :person").bind("person", personId).execute();
    }

    private static Program program(ResultSet row, StatementContext context) throws SQLException {
        return new Program(row.getString("id"), row.getString("person_id"), row.getString("program_name"),
                Column.choice(row, "most", Right.class, null), ReachColumn.read(row.getString("program_depots")),
                Instant.ofEpochMilli(row.getLong("made_at_ms")), Instant.ofEpochMilli(row.getLong("ends_at_ms")), Column.moment(row, "used_at_ms"));
    }
}
