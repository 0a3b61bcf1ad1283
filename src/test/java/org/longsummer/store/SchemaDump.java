package org.longsummer.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * A small record of each version of the tables, as text: written by the version's own code while it was the newest, and never changed
 * since. {@code mvn test -Dtest=SchemasTest -Dschemas.write=true} writes those that are missing.
 */
final class SchemaDump {
    static final Path PLACE = Path.of("src", "test", "resources", "schemas");
    private static final Pattern MIGRATION = Pattern.compile("V(\\d+)__.*\\.sql");
    private static final String END = ";\n-- \n";

    private SchemaDump() {}

    /** Numbers of all versions, in order. */
    static List<Integer> versions() {
        try (Stream<Path> migrations = Files.list(Path.of("src", "main", "resources", "db", "migration"))) {
            TreeMap<Integer, Path> byNumber = new TreeMap<>();
            migrations.forEach(path -> {
                Matcher name = MIGRATION.matcher(path.getFileName().toString());
                if (name.matches()) {
                    byNumber.put(Integer.parseInt(name.group(1)), path);
                }
            });
            return List.copyOf(byNumber.keySet());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static int newest() {
        return versions().get(versions().size() - 1);
    }

    static Path of(int version) {
        return PLACE.resolve("V" + version + ".sql");
    }

    /** Makes the record of a version in a directory. */
    static void load(int version, Path directory) {
        try {
            Files.createDirectories(directory);
            try (Handle handle = handle(directory)) {
                for (String statement : Files.readString(of(version)).split(END)) {
                    if (!statement.isBlank()) {
                        handle.getConnection().createStatement().execute(statement);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (java.sql.SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Writes the dumps that are missing: the newest from new visits, an older one from the one before it. */
    static void writeMissing(Path scratch) {
        List<Integer> versions = versions();
        for (int i = 0; i < versions.size(); i++) {
            int version = versions.get(i);
            Path directory = scratch.resolve("V" + version);
            if (Files.exists(of(version))) {
                continue;
            }
            if (version == newest()) {
                fill(directory);
            } else {
                load(versions.get(i - 1), directory);
                Flyway.configure().dataSource(RawFile.source(directory.resolve(Store.FILE))).target(Integer.toString(version)).load().migrate();
            }
            write(version, directory);
        }
    }

    private static Handle handle(Path directory) {
        return Jdbi.open(RawFile.source(directory.resolve(Store.FILE)));
    }

    /** Two units, visits on several days, a correction, a withdrawal, closed days. */
    private static void fill(Path directory) {
        for (int day = 1; day <= 4; day++) {
            Instant now = Instant.parse("2031-06-0" + day + "T18:00:00Z");
            try (Store store = Store.open(directory, Clock.fixed(now, ZoneOffset.UTC))) {
                store.units().save(Samples.unit("u1"));
                store.units().save(Samples.unit("u2"));
                store.judging().save(Samples.entry("a" + day, "u1", "2031-06-0" + day + "T15:00:00Z"));
                store.judging().save(Samples.entry("b" + day, "u2", "2031-06-0" + day + "T16:00:00Z"));
                if (day == 3) {
                    store.judging().save(Samples.correction("c1", "a2", "u1", "2031-06-02T15:01:00Z"));
                    store.judging().withdraw("b1", "otto", "another van");
                }
            }
        }
    }

    private static void write(int version, Path directory) {
        try (Handle handle = handle(directory)) {
            StringBuilder text = new StringBuilder();
            objects(handle, "type = 'table'").forEach(sql -> text.append(sql).append(END));
            handle.createQuery("select name from sqlite_master where type = 'table' and name not like 'sqlite_%' order by rowid")
                    .mapTo(String.class).list().forEach(table -> rows(handle, table, text));
            objects(handle, "type <> 'table'").forEach(sql -> text.append(sql).append(END));
            Files.createDirectories(PLACE);
            Files.writeString(of(version), text.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> objects(Handle handle, String which) {
        return handle.createQuery("select sql from sqlite_master where sql is not null and name not like 'sqlite_%' and " + which
                + " order by rowid").mapTo(String.class).list();
    }

    private static void rows(Handle handle, String table, StringBuilder text) {
        List<String> columns = new ArrayList<>();
        handle.createQuery("select name from pragma_table_info('" + table + "')").mapTo(String.class)
                .forEach(column -> columns.add("quote(\"" + column + "\")"));
        handle.createQuery("select 'insert into \"" + table + "\" values (' || " + String.join(" || ', ' || ", columns) + " || ')' from \""
                + table + "\"").mapTo(String.class).forEach(insert -> text.append(insert).append(END));
    }
}
