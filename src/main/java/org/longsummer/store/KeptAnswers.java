package org.longsummer.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;

/**
 * Answers that were made before and still hold, because nothing was written since: counting a large fleet, or listing a page of it, costs
 * far more than asking the database whether anybody, in this process or another, has written. What several people ask at the same time is
 * answered once.
 */
public final class KeptAnswers {
    private static final int MOST = 200;

    private final DataSource watching;
    private final Map<Object, CompletableFuture<Object>> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, CompletableFuture<Object>> eldest) {
            return size() > MOST;
        }
    };
    private Connection connection;
    private PreparedStatement asking;
    private long version = -1;

    /**
     * @param watching gives a connection that never writes; one is kept, since only to one and the same do the versions that it tells mean
     *     anything
     */
    KeptAnswers(DataSource watching) {
        this.watching = watching;
    }

    /**
     * What was answered to this question, or is answered now.
     *
     * @param question all that the answer depends on besides what is stored; equal to another one only when it asks the same
     */
    @SuppressWarnings("unchecked")
    public <T> T of(Object question, Supplier<T> answering) {
        CompletableFuture<Object> mine = new CompletableFuture<>();
        CompletableFuture<Object> known = knownOr(question, mine);
        if (known != mine) {
            try {
                return (T) known.join();
            } catch (CompletionException e) {
                return answering.get();
            }
        }
        try {
            T answered = answering.get();
            mine.complete(answered);
            return answered;
        } catch (RuntimeException | Error e) {
            forget(question, mine);
            mine.completeExceptionally(e);
            throw e;
        }
    }

    private synchronized CompletableFuture<Object> knownOr(Object question, CompletableFuture<Object> mine) {
        long now = stored();
        if (now != version) {
            kept.clear();
            version = now;
        }
        CompletableFuture<Object> known = kept.putIfAbsent(question, mine);
        return known == null ? mine : known;
    }

    private synchronized void forget(Object question, CompletableFuture<Object> mine) {
        kept.remove(question, mine);
    }

    /** A number that is another one whenever somebody has written. */
    private long stored() {
        try {
            if (asking == null) {
                connection = watching.getConnection();
                asking = connection.prepareStatement("pragma data_version");
            }
            try (ResultSet row = asking.executeQuery()) {
                row.next();
                return row.getLong(1);
            }
        } catch (SQLException e) {
            giveUp(e);
            throw new UnableToExecuteStatementException(e, null);
        }
    }

    /** The next question begins with a new connection, and with nothing kept. */
    private void giveUp(SQLException because) {
        kept.clear();
        version = -1;
        asking = null;
        try {
            if (connection != null) {
                connection.close();
            }
        } catch (SQLException e) {
            because.addSuppressed(e);
        }
        connection = null;
    }
}
