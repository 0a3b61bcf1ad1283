package org.longsummer.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteDataSource;

/** A database file as it is, of whatever version, without bringing it up to date. */
final class RawFile implements AutoCloseable {
    private static final String HEADER = "SQLite format 3";
    private static final int BUSY_MILLISECONDS = 20_000;
    private static final int FAULTS_LISTED = 5;
    private static final String ASIDE = "aside_";
    private static final String ROUNDING = "1e-9";

    private final Handle handle;

    RawFile(Path file) {
        handle = Jdbi.open(source(file));
    }

    /** Opens a connection to a file each time it is asked for one. */
    static SQLiteDataSource source(Path file) {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + file);
        source.getConfig().setBusyTimeout(BUSY_MILLISECONDS);
        return source;
    }

    /** @throws StoreRefused when a file that is there is no database */
    static void refuseForeign(Path file) throws IOException {
        if (Files.exists(file) && Files.size(file) > 0) {
            try (InputStream bytes = Files.newInputStream(file)) {
                if (!new String(bytes.readNBytes(HEADER.length()), StandardCharsets.ISO_8859_1).equals(HEADER)) {
                    throw new StoreRefused(file + " is not a record of Longsummer, or it is damaged; restore a backup, or name another "
                            + "directory.");
                }
            }
        }
    }

    /** Writes the last whole state into a new file, in one reading of it. */
    void copyInto(Path out) {
        handle.execute("vacuum into ?", out.toString());
    }

    /** What the database says against its own pages and references; empty when it is whole. */
    String integrity() {
        try {
            return faults();
        } catch (RuntimeException e) {
            if (Trouble.in(e).filter(trouble -> trouble == Trouble.DAMAGED).isEmpty()) {
                throw e;
            }
            return "its pages cannot be read";
        }
    }

    private String faults() {
        List<String> faults = handle.createQuery("pragma integrity_check(" + FAULTS_LISTED + ")").mapTo(String.class)
                .filter(line -> !line.equals("ok")).collect(Collectors.toList());
        faults.addAll(handle.createQuery("""
                select "table" || ' row ' || coalesce(rowid, '?') || ' refers to a row of ' || parent || ' that is not there'
                from pragma_foreign_key_check limit :listed""").bind("listed", FAULTS_LISTED).mapTo(String.class).list());
        return String.join("; ", faults);
    }

    /** How many rows break each rule, in words; rules that hold are left out. */
    List<String> broken(Map<String, String> rules) {
        List<String> broken = new ArrayList<>();
        rules.forEach((words, query) -> {
            int rows = handle.createQuery(query).mapTo(Integer.class).one();
            if (rows > 0) {
                broken.add(rows + " " + words);
            }
        });
        return broken;
    }

    /** Keeps a table's rows as they are now. */
    void keepAside(String table) {
        handle.execute("create table " + ASIDE + table + " as select * from " + table);
    }

    /**
     * The units whose rows differ from those that were kept aside: in a word or a day at all, in a number by more than rounding on
     * another machine may bring about. Columns that came since are not looked at, nor what is advised: that is of its day and its prices.
     */
    List<String> changedSince(String table, String key) {
        String different = handle.createQuery("select name from pragma_table_info(:aside) where name not like 'advice!_%' escape '!' and name <> 'judged_by'")
                .bind("aside", ASIDE + table).mapTo(String.class)
                .stream().map(column -> "(a.%1$s is not b.%1$s and not (typeof(a.%1$s) = 'real' and typeof(b.%1$s) = 'real' "
                        .formatted(column) + "and abs(a.%1$s - b.%1$s) <= %2$s * max(1, abs(b.%1$s))))".formatted(column, ROUNDING))
                .collect(Collectors.joining(" or "));
        return handle.createQuery("select distinct coalesce(a.unit_id, b.unit_id) from " + ASIDE + table + " a full join " + table
                + " b on a." + key + " = b." + key + " where " + different).mapTo(String.class).list();
    }

    @Override
    public void close() {
        handle.close();
    }
}
