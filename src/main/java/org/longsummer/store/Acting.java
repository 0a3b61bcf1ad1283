package org.longsummer.store;

import java.sql.SQLException;
import java.time.Clock;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.DelegatingTransactionHandler;
import org.jdbi.v3.core.transaction.LocalTransactionHandler;
import org.jdbi.v3.core.transaction.TransactionHandler;

/**
 * Who is changing something on this thread. The shell says it once, at its door; every writing transaction then carries it to the
 * journal, so that no change can be made that says not who made it.
 */
public final class Acting {
    private final ThreadLocal<Actor> actor = ThreadLocal.withInitial(() -> Actor.ITSELF);
    private final Clock clock;

    Acting(Clock clock) {
        this.clock = clock;
    }

    /** From now on, this thread's changes are this actor's. */
    public void begin(Actor who) {
        actor.set(who);
    }

    /** This thread's changes are nobody's any more. */
    public void end() {
        actor.remove();
    }

    Actor now() {
        return actor.get();
    }

    long atMilliseconds() {
        return clock.instant().toEpochMilli();
    }

    /** Makes every transaction of the writer say who is acting, from its first statement to its last. */
    void stamp(Jdbi writer) {
        writer.setTransactionHandler(new Stamping(LocalTransactionHandler.binding()));
    }

    /** Makes what follows in this transaction this thread's actor's. */
    void stamp(Handle handle) {
        Actor who = now();
        handle.createUpdate("""
                insert into acting (one, at_ms, who, person_id, way) values (1, :at, :who, :person, :way)
                on conflict (one) do update set at_ms = excluded.at_ms, who = excluded.who, person_id = excluded.person_id,
                way = excluded.way""")
                .bind("at", atMilliseconds()).bind("who", who.name()).bind("person", who.personId()).bind("way", who.way())
                .execute();
    }

    private final class Stamping extends DelegatingTransactionHandler {
        private Stamping(TransactionHandler delegate) {
            super(delegate);
        }

        @Override
        public void begin(Handle handle) {
            super.begin(handle);
            stamp(handle);
        }

        @Override
        public void commit(Handle handle) {
            handle.execute("delete from acting");
            super.commit(handle);
        }

        @Override
        public TransactionHandler specialize(Handle handle) throws SQLException {
            return new Stamping(getDelegate().specialize(handle));
        }
    }
}
