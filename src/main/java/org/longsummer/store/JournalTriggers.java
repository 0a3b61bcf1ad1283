package org.longsummer.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/**
 * SQLite's triggers that write the journal: made from the tables as they are, so that a table or a column that is added later is
 * journaled from its first row, whoever writes to it.
 */
final class JournalTriggers {
    /**
     * What is not journaled, because it is append-only and says itself who and when, or because it is derived and can be made anew, or
     * because the program writes its own line ({@code session}, {@code invitation}).
     */
    static final Set<String> LEFT_OUT = Set.of("visit", "withdrawal", "unit_change", "instruments", "verdict", "standing", "standing_block", "closing", "session", "invitation",
            "journal", "acting", "flyway_schema_history");
    /** Settings that the program keeps for itself. */
    private static final String SETTING_CONDITION = "%1$s.name not in ('generation', 'closed_through')";
    private static final Set<String> UNTOLD_COLUMNS = Set.of("used_at_ms");

    private JournalTriggers() {}

    private record Column(String name, boolean blob, int key) {
        String told(String row) {
            return name.endsWith("_hash") ? "'(secret)'" : blob ? "length(%s.%s) || ' bytes'".formatted(row, name) : row + "." + name;
        }
    }

    /** Makes what is missing and replaces what no longer fits the tables. */
    static void lay(Handle handle) {
        Map<String, String> wanted = new LinkedHashMap<>();
        for (String table : journaled(handle)) {
            List<Column> columns = columns(handle, table);
            wanted.put("journal_" + table + "_added", added(table, columns));
            wanted.put("journal_" + table + "_changed", changed(table, columns));
            wanted.put("journal_" + table + "_removed", removed(table, columns));
        }
        Map<String, String> there = handle.createQuery("select name, sql from sqlite_master where type = 'trigger' and name like 'journal!_%' escape '!'")
                .reduceRows(new LinkedHashMap<String, String>(), (all, row) -> {
                    all.put(row.getColumn("name", String.class), row.getColumn("sql", String.class));
                    return all;
                });
        wanted.forEach((name, sql) -> {
            if (!sql.equals(there.get(name))) {
                handle.execute("drop trigger if exists " + name);
                handle.execute(sql);
            }
        });
    }

    static List<String> journaled(Handle handle) {
        return handle.createQuery("select name from sqlite_master where type = 'table' and name not like 'sqlite!_%' escape '!' order by name")
                .mapTo(String.class).stream().filter(Predicate.not(LEFT_OUT::contains)).toList();
    }

    private static List<Column> columns(Handle handle, String table) {
        return handle.createQuery("select name, type, pk from pragma_table_info(:table) order by cid").bind("table", table)
                .map((row, context) -> new Column(row.getString("name"), row.getString("type").equalsIgnoreCase("blob"), row.getInt("pk"))).list();
    }

    private static String added(String table, List<Column> columns) {
        return trigger(table, "added", "insert", "new", columns, condition(table, "new"), "null", "null");
    }

    private static String removed(String table, List<Column> columns) {
        return trigger(table, "removed", "delete", "old", columns, condition(table, "old"), told("old", columns, column -> ""), "null");
    }

    private static String changed(String table, List<Column> columns) {
        List<Column> told = columns.stream().filter(column -> !UNTOLD_COLUMNS.contains(column.name())).toList();
        String differs = told.stream().map(JournalTriggers::differs).collect(Collectors.joining(" or "));
        String condition = condition(table, "new");
        return trigger(table, "changed", "update", "old", columns, condition.isEmpty() ? differs : "(" + differs + ") and " + condition,
                told("old", told, column -> " where " + differs(column)), told("new", told, column -> " where " + differs(column)));
    }

    private static String differs(Column column) {
        return "old.%1$s is not new.%1$s".formatted(column.name());
    }

    private static String condition(String table, String row) {
        return table.equals("setting") ? SETTING_CONDITION.formatted(row) : "";
    }

    private static String told(String row, List<Column> columns, java.util.function.Function<Column, String> where) {
        return columns.stream().map(column -> "select '%s' as k, %s as v%s".formatted(column.name(), column.told(row), where.apply(column)))
                .collect(Collectors.joining(" union all ", "(select json_group_object(k, v) from (", "))"));
    }

    private static String trigger(String table, String event, String on, String row, List<Column> columns, String when, String before, String after) {
        String key = columns.stream().filter(column -> column.key() > 0).map(column -> row + "." + column.name())
                .collect(Collectors.joining(" || '/' || "));
        String unit = table.equals("unit") ? row + ".id" : columns.stream().anyMatch(column -> column.name().equals("unit_id"))
                ? row + ".unit_id" : "null";
        return """
                create trigger journal_%1$s_%2$s after %3$s on %1$s%4$s
                begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
                values (coalesce((select at_ms from acting), cast(strftime('%%s', 'now') as integer) * 1000),
                coalesce((select who from acting), 'somebody'), (select person_id from acting),
                coalesce((select way from acting), 'outside of Longsummer'), '%1$s', %5$s, %6$s, '%2$s', %7$s, %8$s); end"""
                .formatted(table, event, on, when.isEmpty() ? "" : " when " + when, key.isEmpty() ? "''" : key, unit, before, after);
    }
}
