package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.access.Passwords;
import org.longsummer.access.Person;
import org.longsummer.access.Reach;
import org.longsummer.access.Right;
import org.longsummer.access.Role;
import org.longsummer.access.Secret;
import org.longsummer.quantity.Altitude;

/** Every change says who, when and what was before, in the transaction that makes it; and no secret lies in the file. */
class JournalTest {
    private static final Instant NOW = Instant.parse("2031-06-10T15:00:00.123Z");
    private static final Actor INES = new Actor("Ines Calder", Optional.of("p1"), "signed in");

    @TempDir
    private Path directory;

    private Store open() {
        return Store.open(directory, Clock.fixed(NOW, ZoneOffset.UTC));
    }

    private Connection file() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + directory.resolve(Store.FILE));
    }

    @Test
    void aChangeSaysWhoWhenAndWhatWasBefore() {
        try (Store store = open()) {
            store.acting().begin(INES);
            store.units().save(Samples.unit("u1"));
            store.acting().begin(new Actor("Moss Tarrin", Optional.of("p2"), "phone"));
            FleetUnit unit = Samples.unit("u1");
            store.units().save(new FleetUnit(unit.unit(), unit.make(), "NB-150", unit.serial(), "Van 13", unit.roofPosition(), unit.owner(),
                    unit.warrantyUntil(), unit.duty()));
            List<JournalLine> lines = store.journal().ofUnit("u1", 10);
            assertEquals(2, lines.size());
            JournalLine changed = lines.get(0);
            assertEquals("Moss Tarrin", changed.who());
            assertEquals("phone", changed.way());
            assertEquals(NOW, changed.at());
            assertEquals("changed", changed.event());
            assertEquals(Optional.of("{\"model\":\"NB-135\",\"vehicle\":\"Van 12\"}"), changed.before(), "only what differs");
            assertEquals(Optional.of("{\"model\":\"NB-150\",\"vehicle\":\"Van 13\"}"), changed.after());
            assertEquals("added by Ines Calder", lines.get(1).event() + " by " + lines.get(1).who());
        }
    }

    @Test
    void savingTheSameAgainIsNoChange() {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            int lines = store.journal().count();
            store.units().save(Samples.unit("u1"));
            assertEquals(lines, store.journal().count());
        }
    }

    /** The line and the change are on disk together or not at all. */
    @Test
    void aChangeThatFailsLeavesNoLine() {
        try (Store store = open()) {
            int lines = store.journal().count();
            assertThrows(IllegalStateException.class, () -> store.judging().takeIn(intake -> {
                intake.unit(Samples.unit("u1"));
                intake.known("u1").orElseThrow();
                throw new IllegalStateException("the source broke off");
            }, unit -> { }));
            assertEquals(0, store.units().count());
            assertEquals(lines, store.journal().count());
        }
    }

    @Test
    void workThatNobodyAskedForSaysSo() throws InterruptedException {
        try (Store store = open()) {
            store.acting().begin(INES);
            Thread other = new Thread(() -> store.depots().save(new Depot("Lake Orrin", Optional.of(new Altitude(700)), Optional.empty(), Optional.empty())));
            other.start();
            other.join();
            assertEquals("itself", store.journal().page(0, 1).get(0).way());
            store.acting().end();
            store.depots().save(new Depot("Lake Orrin", Optional.of(new Altitude(710)), Optional.empty(), Optional.empty()));
            assertEquals("Longsummer", store.journal().page(0, 1).get(0).who());
        }
    }

    @Test
    void noLineCanBeChangedOrRemovedAndNobodyIs() throws SQLException {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            store.people().add("Ines Calder", Role.TECHNICIAN, Reach.EVERYWHERE);
        }
        try (Connection connection = file(); Statement statement = connection.createStatement()) {
            for (String change : List.of("update journal set who = 'nobody'", "delete from journal", "delete from person")) {
                assertThrows(SQLException.class, () -> statement.execute(change), change);
            }
            statement.execute("update unit set make = 'other' where id = 'u1'");
            try (ResultSet line = statement.executeQuery("select who, way, before_json from journal order by id desc limit 1")) {
                assertEquals("somebody, outside of Longsummer: {\"make\":\"Nimbell\"}",
                        line.getString("who") + ", " + line.getString("way") + ": " + line.getString("before_json"), "whoever changes the file itself");
            }
        }
    }

    /** What is journaled is decided by leaving out, so that a table that is added later is in it. */
    @Test
    void everyTableIsJournaledUnlessItSaysItselfWhoAndWhen() throws SQLException {
        try (Store store = open()) {
            assertEquals(0, store.units().count());
        }
        TreeSet<String> silent = new TreeSet<>();
        try (Connection connection = file(); Statement statement = connection.createStatement()) {
            List<String> tables = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery("select name from sqlite_master where type = 'table' and name not like 'sqlite%'")) {
                while (rows.next()) {
                    tables.add(rows.getString(1));
                }
            }
            for (String table : tables) {
                try (ResultSet triggers = statement.executeQuery("select count(*) from sqlite_master where type = 'trigger' and tbl_name = '"
                        + table + "' and name like 'journal_" + table + "%'")) {
                    if (triggers.getInt(1) != 3) {
                        silent.add(table);
                    }
                }
            }
            assertTrue(tables.contains("unit") && tables.contains("person"), tables::toString);
        }
        assertEquals(new TreeSet<>(JournalTriggers.LEFT_OUT), silent);
    }

    @Test
    void aTableOrColumnThatIsAddedLaterIsJournaledFromItsFirstRow() throws SQLException {
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
        }
        try (Connection connection = file(); Statement statement = connection.createStatement()) {
            statement.execute("alter table unit add column colour text");
            statement.execute("create table finding (id text primary key, unit_id text not null, taken_by text, picture blob)");
        }
        try (Store store = open()) {
            assertEquals(1, store.units().count());
        }
        try (Connection connection = file(); Statement statement = connection.createStatement()) {
            statement.execute("update unit set colour = 'sand'");
            statement.execute("insert into finding values ('f1', 'u1', 'Ines', x'0102')");
            statement.execute("delete from finding");
        }
        try (Store store = open()) {
            List<JournalLine> lines = store.journal().ofUnit("u1", 3);
            assertEquals(Optional.of("{\"id\":\"f1\",\"unit_id\":\"u1\",\"taken_by\":\"Ines\",\"picture\":\"2 bytes\"}"), lines.get(0).before());
            assertEquals("added", lines.get(1).event());
            assertEquals(Optional.of("{\"colour\":null}"), lines.get(2).before());
        }
    }

    @Test
    void theFileHoldsNoSecretThatOpensAnything() throws IOException {
        String password = "pebble lantern oatmeal drift";
        List<Secret> secrets = new ArrayList<>();
        try (Store store = open()) {
            store.units().save(Samples.unit("u1"));
            Person person = store.people().add("Ines Calder", Role.MANAGER, Reach.EVERYWHERE).orElseThrow();
            store.people().setPassword(person.id(), new Passwords().hash(password), Optional.empty());
            secrets.add(store.sessions().begin(person, Session.Kind.BROWSER, "desk"));
            secrets.add(store.sessions().begin(person, Session.Kind.PHONE, "phone"));
            secrets.add(store.programs().make(person.id(), "shop", Right.SEE, Reach.EVERYWHERE, java.time.Duration.ofDays(1)));
            secrets.add(store.sheetLinks().make("u1", "Ines Calder"));
            secrets.add(store.people().invite(person.id()));
            assertTrue(store.sessions().open(secrets.get(0)).isPresent() && store.programs().open(secrets.get(2)).isPresent());
            assertTrue(store.journal().page(0, 50).stream().noneMatch(line -> (line.before() + "" + line.after()).contains("argon2")));
        }
        for (Path file : Files.list(directory).toList()) {
            String bytes = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
            assertFalse(bytes.contains(password), file::toString);
            secrets.forEach(secret -> assertFalse(bytes.contains(secret.text()), file::toString));
        }
    }
}
