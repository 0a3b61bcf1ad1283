package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longsummer.chain.visit.Visit;

/** A record of every version there ever was is brought up to date, after a backup, with nothing lost. */
class SchemasTest {
    private static final Clock LATER = Clock.fixed(Instant.parse("2031-06-05T18:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path directory;

    private static List<Integer> versions() {
        return SchemaDump.versions();
    }

    @Test
    void everyVersionHasItsDump() {
        if (Boolean.getBoolean("schemas.write")) {
            SchemaDump.writeMissing(directory);
        }
        List<Integer> missing = versions().stream().filter(version -> !Files.exists(SchemaDump.of(version))).toList();
        assertTrue(missing.isEmpty(), () -> "no record of version " + missing + " in " + SchemaDump.PLACE
                + "; mvn test -Dtest=SchemasTest -Dschemas.write=true writes one. Commit it with the migration and never change it.");
    }

    @ParameterizedTest
    @MethodSource("versions")
    void aRecordOfAnOldVersionIsBroughtUpToDateAfterABackup(int version) throws IOException {
        Path data = directory.resolve("data");
        SchemaDump.load(version, data);
        try (Store store = Store.open(data, LATER)) {
            assertEquals(List.of("a1", "c1", "a3", "a4"), store.visits().current("u1").stream().map(Visit::id).toList());
            assertEquals(List.of("b2", "b3", "b4"), store.visits().current("u2").stream().map(Visit::id).toList());
            assertEquals(Samples.unit("u1"), store.units().find("u1").orElseThrow());
            assertEquals(Samples.visit("a1", "u1", "2031-06-01T15:00:00Z"), store.visits().find("a1").orElseThrow().visit());
            assertEquals("77.30", store.visits().find("a1").orElseThrow().entry().typed().texts().get("return_db_f"));
            assertEquals("another van", store.visits().find("b1").orElseThrow().withdrawal().orElseThrow().reason());
            assertInstanceOf(Saving.Stored.class, store.judging().save(Samples.entry("a5", "u1", "2031-06-05T15:00:00Z")));
            List.of("u1", "u2").forEach(store.judging()::judgeAgain);
        }
        assertEquals(new RecordCheck.Report(2, 10, List.of(), List.of()), RecordCheck.run(data, LATER, unit -> { }));
        assertEquals(version < SchemaDump.newest() ? 1 : 0, backups(data), "a backup before an upgrade, and only then");
    }

    /** However old the record was, it ends as a new one begins; a new migration, table or trigger needs its number written into {@link Schema}. */
    @ParameterizedTest
    @MethodSource("versions")
    void aRecordIsKnownByItsFingerprintOnceEverythingIsLaid(int version) {
        Path data = directory.resolve("data");
        SchemaDump.load(version, data);
        Store.open(data, LATER).close();
        try (Handle handle = Jdbi.open(RawFile.source(data.resolve(Store.FILE)))) {
            assertEquals(Schema.fingerprint(handle), Schema.LAID, "write the expected number into Schema.LAID");
            handle.execute("drop trigger visit_is_kept");
            assertNotEquals(Schema.LAID, Schema.fingerprint(handle));
        }
        Store.open(data, LATER).close();
        try (Handle handle = Jdbi.open(RawFile.source(data.resolve(Store.FILE)))) {
            assertEquals(Schema.LAID, Schema.fingerprint(handle), "what somebody took away is laid again");
        }
    }

    private static long backups(Path data) throws IOException {
        try (Stream<Path> files = Files.list(data)) {
            return files.filter(file -> file.getFileName().toString().startsWith("before-upgrade-from-")).count();
        }
    }

    /** Seen with a migration that is made up here, so that it holds while there is only one version. */
    @Test
    void aBackupIsMadeBeforeAnUpgradeAndOnlyThen() throws IOException {
        Path data = directory.resolve("data");
        SchemaDump.load(SchemaDump.newest(), data);
        Path file = data.resolve(Store.FILE);
        Path later = Files.createDirectory(directory.resolve("later"));
        Files.writeString(later.resolve("V9999__later.sql"), "create table later (id text primary key);");
        String[] places = {"db/migration", "filesystem:" + later};
        Schema.bringUpToDate(RawFile.source(file), file, LATER.instant(), "db/migration");
        assertEquals(0, backups(data));
        Schema.bringUpToDate(RawFile.source(file), file, LATER.instant(), places);
        assertEquals(1, backups(data));
        Schema.bringUpToDate(RawFile.source(file), file, LATER.instant(), places);
        assertEquals(1, backups(data));
        assertTrue(org.junit.jupiter.api.Assertions.assertThrows(StoreRefused.class, () -> Store.open(data, LATER)).getMessage()
                .contains("newer version"));
        Path copy = data.resolve("before-upgrade-from-" + SchemaDump.newest() + "-20310605T180000Z.sqlite");
        Backup.restore(copy, directory.resolve("restored"));
        try (Store store = Store.open(directory.resolve("restored"), LATER)) {
            assertEquals(9, store.visits().count());
        }
    }
}
