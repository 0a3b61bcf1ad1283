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
import org.longsummer.access.Role;
import org.longsummer.access.Secret;

/** The people with an account. They are added, changed and closed, never removed. */
public final class People {
    /** How long a link lives by which somebody chooses his password. */
    public static final Duration INVITATION_LIVES = Duration.ofDays(3);
    static final String OTHER_COLUMNS = "p.name, p.role, p.depots, p.active, p.password_hash is not null as has_password";
    private static final String COLUMNS = "p.id, " + OTHER_COLUMNS;

    private final Jdbi reader;
    private final Jdbi writer;
    private final Clock clock;

    People(Jdbi reader, Jdbi writer, Clock clock) {
        this.reader = reader;
        this.writer = writer;
        this.clock = clock;
    }

    /** What became of a wish to change somebody. */
    public enum Outcome {
        DONE,
        UNKNOWN,
        /** Without him nobody could administer any more. */
        LAST_ADMINISTRATOR
    }

    /** Somebody can sign in and administer; from then on nobody gets in without signing in. */
    public boolean areDefined() {
        return reader.withHandle(handle -> administrators(handle, "") > 0);
    }

    public List<Person> all() {
        return reader.withHandle(handle -> handle.createQuery("select " + COLUMNS + " from person p order by p.active desc, p.name_key")
                .map(People::person).list());
    }

    public Optional<Person> find(String id) {
        return reader.withHandle(handle -> find(handle, id));
    }

    static Optional<Person> find(Handle handle, String id) {
        return handle.createQuery("select " + COLUMNS + " from person p where p.id = :id").bind("id", id).map(People::person).findOne();
    }

    /** The person of a name, whatever its case and blanks. */
    public Optional<Person> named(String name) {
        return reader.withHandle(handle -> handle.createQuery("select " + COLUMNS + " from person p where p.name_key = :key")
                .bind("key", Person.folded(name)).map(People::person).findOne());
    }

    /** What is kept of somebody's password. */
    public Optional<String> passwordHash(String personId) {
        return reader.withHandle(handle -> handle.createQuery("select password_hash from person where id = :id").bind("id", personId)
                .mapTo(String.class).findOne());
    }

    /**
     * Adds somebody, still without a password.
     *
     * @return empty when the name is taken, be it by somebody whose account is closed
     */
    public Optional<Person> add(String name, Role role, Reach reach) {
        String id = Secret.id("p");
        int added = writer.inTransaction(handle -> handle.createUpdate("""
                insert into person (id, name, name_key, role, depots, active) values (:id, :name, :key, :role, :depots, 1)
                on conflict (name_key) do nothing""").bind("id", id).bind("name", name.strip().replaceAll("\\s+", " "))
                .bind("key", Person.folded(name)).bind("role", role.word()).bind("depots", ReachColumn.write(reachOf(role, reach))).execute());
        return added == 1 ? find(id) : Optional.empty();
    }

    /** Gives somebody another role or other depots; holds from his next request on. */
    public Outcome change(String personId, Role role, Reach reach) {
        return update(personId, role != Role.ADMINISTRATOR, "update person set role = :role, depots = :depots where id = :id",
                role, reachOf(role, reach));
    }

    /** Closes an account: its sessions, phones, programs and links end at once. */
    public Outcome close(String personId) {
        return update(personId, true, "update person set active = 0 where id = :id", null, Reach.EVERYWHERE);
    }

    /** Opens a closed account again; whatever opened it before does so no more, and a new password must be chosen. */
    public Outcome reopen(String personId) {
        return update(personId, false, "update person set active = 1, password_hash = null where id = :id", null, Reach.EVERYWHERE);
    }

    /** Who administers sees everything: he could give it to himself. */
    private static Reach reachOf(Role role, Reach reach) {
        return role == Role.ADMINISTRATOR ? Reach.EVERYWHERE : reach;
    }

    private Outcome update(String personId, boolean mayLoseAdministrator, String sql, Role role, Reach reach) {
        return writer.inTransaction(handle -> {
            if (find(handle, personId).isEmpty()) {
                return Outcome.UNKNOWN;
            }
            if (mayLoseAdministrator && administrators(handle, "") > 0 && administrators(handle, personId) == 0) {
                return Outcome.LAST_ADMINISTRATOR;
            }
            handle.createUpdate(sql).bind("id", personId).bind("role", role == null ? null : role.word())
                    .bind("depots", ReachColumn.write(reach)).execute();
            if (find(handle, personId).filter(Person::active).isEmpty()) {
                Sessions.endAll(handle, personId, Optional.empty());
                Programs.endAll(handle, personId);
                handle.createUpdate("delete from invitation where person_id = :id").bind("id", personId).execute();
            }
            return Outcome.DONE;
        });
    }

    private static int administrators(Handle handle, String exceptId) {
        return handle.createQuery("""
                select count(*) from person where role = 'administrator' and active = 1 and password_hash is not null
                and id <> :except""").bind("except", exceptId).mapTo(Integer.class).one();
    }

    /**
     * Keeps somebody's password and ends every session and phone of his except one.
     *
     * @param exceptSession the session in which it was changed, empty for none
     */
    public void setPassword(String personId, String hash, Optional<String> exceptSession) {
        writer.useTransaction(handle -> setPassword(handle, personId, hash, exceptSession));
    }

    private static void setPassword(Handle handle, String personId, String hash, Optional<String> exceptSession) {
        handle.createUpdate("update person set password_hash = :hash where id = :id").bind("hash", hash).bind("id", personId).execute();
        Sessions.endAll(handle, personId, exceptSession);
        handle.createUpdate("delete from invitation where person_id = :id").bind("id", personId).execute();
    }

    /** Keeps the same password with today's parameters. */
    public void rehash(String personId, String hash) {
        writer.useTransaction(handle -> handle.createUpdate("update person set password_hash = :hash where id = :id")
                .bind("hash", hash).bind("id", personId).execute());
    }

    /** Makes a link by which somebody chooses a password, once, and ends the earlier ones. */
    public Secret invite(String personId) {
        Secret secret = Secret.make();
        writer.useTransaction(handle -> {
            handle.createUpdate("delete from invitation where person_id = :id").bind("id", personId).execute();
            handle.createUpdate("insert into invitation (secret_hash, person_id, ends_at_ms) values (:hash, :id, :ends)")
                    .bind("hash", secret.hash()).bind("id", personId)
                    .bind("ends", clock.instant().plus(INVITATION_LIVES).toEpochMilli()).execute();
            Journal.note(handle, "person", personId, "link to choose a password made");
        });
        return secret;
    }

    /** Whom a link invites, while it lives. */
    public Optional<Person> invited(Secret secret) {
        return reader.withHandle(handle -> invited(handle, secret));
    }

    /** Takes the invitation: keeps the password, and the link is used up. Empty when it no longer lives. */
    public Optional<Person> acceptInvitation(Secret secret, String hash) {
        return writer.inTransaction(handle -> {
            Optional<Person> person = invited(handle, secret);
            person.ifPresent(known -> setPassword(handle, known.id(), hash, Optional.empty()));
            return person;
        });
    }

    private Optional<Person> invited(Handle handle, Secret secret) {
        Instant now = clock.instant();
        return handle.createQuery("select " + COLUMNS + """
                 from invitation i join person p on p.id = i.person_id
                where i.secret_hash = :hash and i.ends_at_ms > :now and p.active = 1""")
                .bind("hash", secret.hash()).bind("now", now.toEpochMilli()).map(People::person).findOne();
    }

    private static Person person(ResultSet row, StatementContext context) throws SQLException {
        return person(row, row.getString("id"));
    }

    static Person person(ResultSet row, String id) throws SQLException {
        return new Person(id, row.getString("name"), Column.choice(row, "role", Role.class, null),
                ReachColumn.read(row.getString("depots")), row.getInt("active") == 1, row.getInt("has_password") == 1);
    }
}
