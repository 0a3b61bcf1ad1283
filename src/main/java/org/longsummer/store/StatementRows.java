package org.longsummer.store;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;

/** Rows that a statement writes, some at a time. */
final class StatementRows extends Rows implements AutoCloseable {
    private static final int ROWS_AT_ONCE = 200;

    private final PreparedStatement statement;
    private int waiting;

    /** @param sql with each name once, as {@code :name} */
    StatementRows(Handle handle, String sql) {
        super(sql);
        try {
            statement = handle.getConnection().prepareStatement(unnamed(sql));
        } catch (SQLException e) {
            throw failure(e);
        }
    }

    private static RuntimeException failure(SQLException cause) {
        return new UnableToExecuteStatementException(cause, null);
    }

    @Override
    void take(Object[] row) {
        try {
            for (int i = 0; i < row.length; i++) {
                statement.setObject(i + 1, row[i]);
            }
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
