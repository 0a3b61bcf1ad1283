package org.longsummer.store;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;

/**
 * Many rows for one statement, bound by the names in it. A row costs a look-up a value and no more: where a fleet's whole history is
 * written, what a general binder does for each value outweighs the writing itself.
 */
final class Rows implements AutoCloseable {
    private static final Pattern NAME = Pattern.compile(":([a-z_0-9]+)");
    private static final int ROWS_AT_ONCE = 200;

    private final Map<String, Integer> places = new HashMap<>();
    private final PreparedStatement statement;
    private int waiting;

    /** @param sql with each name once, as {@code :name} */
    Rows(Handle handle, String sql) {
        Matcher names = NAME.matcher(sql);
        for (MatchResult name : names.results().toList()) {
            if (places.put(name.group(1), places.size() + 1) != null) {
                throw new IllegalArgumentException(name.group() + " stands twice in " + sql);
            }
        }
        try {
            statement = handle.getConnection().prepareStatement(names.replaceAll("?"));
        } catch (SQLException e) {
            throw failure(e);
        }
    }

    private static RuntimeException failure(SQLException cause) {
        return new UnableToExecuteStatementException(cause, null);
    }

    /** @param value a text or a number; null, or empty, for none */
    Rows bind(String name, Object value) {
        try {
            statement.setObject(places.get(name), value instanceof Optional<?> some ? some.orElse(null) : value);
            return this;
        } catch (SQLException e) {
            throw failure(e);
        }
    }

    /** The row is complete. */
    void add() {
        try {
            statement.addBatch();
            if (++waiting == ROWS_AT_ONCE) {
                write();
            }
        } catch (SQLException e) {
            throw failure(e);
        }
    }

    private void write() throws SQLException {
        if (waiting > 0) {
            statement.executeBatch();
            waiting = 0;
        }
    }

    /** Writes what was added. */
    void execute() {
        try {
            write();
        } catch (SQLException e) {
            throw failure(e);
        }
    }

    @Override
    public void close() {
        try {
            statement.close();
        } catch (SQLException e) {
            throw failure(e);
        }
    }
}
