package org.longsummer.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.StatementExceptions;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Connections to the record's file, as many as there may be of a kind. */
final class Pools {
    private static final int BUSY_MILLISECONDS = 20_000;

    private Pools() {}

    /** FULL: a transaction that was acknowledged survives a loss of power; WAL: readers do not wait for the writer. */
    static SQLiteDataSource source(Path file, SQLiteConfig.TransactionMode mode, int pagesKilobytes) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setTransactionMode(mode);
        config.setCacheSize(-pagesKilobytes);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    /** Failures name no values: what people read off their instruments must not end up in a log. */
    static Jdbi jdbi(HikariDataSource pool) {
        Jdbi jdbi = Jdbi.create(pool);
        jdbi.getConfig(StatementExceptions.class).setMessageRendering(StatementExceptions.MessageRendering.NONE);
        return jdbi;
    }

    static HikariDataSource pool(SQLiteDataSource source, int size) {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source);
        config.setMaximumPoolSize(size);
        config.setConnectionTimeout(BUSY_MILLISECONDS * 3L);
        config.setMaxLifetime(0);
        return new HikariDataSource(config);
    }
}
