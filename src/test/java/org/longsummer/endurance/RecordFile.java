package org.longsummer.endurance;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.TreeMap;
import org.longsummer.store.Store;

/** A record's file as a plain database, asked without Longsummer's own code. */
final class RecordFile implements AutoCloseable {
    private final Connection connection;

    RecordFile(Path data) {
        try {
            connection = DriverManager.getConnection("jdbc:sqlite:" + data.resolve(Store.FILE));
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The first column of the only row. */
    String one(String sql) {
        try (Statement statement = connection.createStatement(); ResultSet rows = statement.executeQuery(sql)) {
            rows.next();
            return rows.getString(1);
        } catch (SQLException e) {
            throw new IllegalStateException(sql, e);
        }
    }

    /** Numbers by names: the two columns of a query. */
    Map<String, Integer> counts(String sql) {
        try (Statement statement = connection.createStatement(); ResultSet rows = statement.executeQuery(sql)) {
            Map<String, Integer> counts = new TreeMap<>();
            while (rows.next()) {
                counts.put(rows.getString(1), rows.getInt(2));
            }
            return counts;
        } catch (SQLException e) {
            throw new IllegalStateException(sql, e);
        }
    }

    void execute(String sql) {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(sql, e);
        }
    }

    /** What the file says against itself; empty when it is whole. */
    String faults() {
        StringBuilder faults = new StringBuilder();
        String integrity = one("pragma integrity_check");
        faults.append(integrity.equals("ok") ? "" : "integrity: " + integrity + "; ");
        faults.append(counted("references that lead nowhere", "select count(*) from pragma_foreign_key_check"));
        faults.append(counted("visits that count without a verdict", """
                select count(*) from visit v where not exists (select 1 from verdict d where d.visit_id = v.id)
                and not exists (select 1 from visit c where c.corrects_id = v.id)
                and not exists (select 1 from withdrawal w where w.visit_id = v.id)"""));
        faults.append(counted("standings that miscount", """
                select count(*) from standing s where s.visit_count <> (select count(*) from verdict d where d.unit_id = s.unit_id)"""));
        faults.append(counted("units without a standing", "select count(*) from unit where id not in (select unit_id from standing)"));
        return faults.toString();
    }

    private String counted(String what, String sql) {
        String count = one(sql);
        return count.equals("0") ? "" : count + " " + what + "; ";
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
