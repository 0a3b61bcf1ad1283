package org.longsummer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.demo.DemoFleet;
import org.longsummer.store.Store;

/** The command line as a person meets it: what it says and how it ends. */
class LongsummerTest {
    private static final String UNITS = "src/test/resources/fleet-dev/units.csv";
    private static final String VISITS = "src/test/resources/fleet-dev/visits.csv";

    @TempDir
    Path directory;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Longsummer.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    }

    @Test
    void helpAndVersionAreOnStandardOutput() {
        assertEquals(0, run("--help"));
        assertTrue(out.toString().contains("Usage: longsummer"), out.toString());
        assertEquals(0, run("--version"));
        assertTrue(out.toString().contains("Longsummer "), out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void everyCommandHasHelp() {
        for (String command : new String[] {"serve", "import", "export", "assess", "demo-data"}) {
            assertEquals(0, run(command, "--help"), command);
        }
    }

    @Test
    void aCommandLineThatIsNotUnderstoodEndsWithTwo() {
        assertEquals(2, run("asses"));
        assertEquals(2, run("assess", "--units", UNITS));
        assertEquals(2, run("--port", "many"));
        assertEquals(2, run("--port", "99999", "--data", directory.toString()));
        assertEquals(2, run("import", "--data", directory.toString()));
        assertEquals(2, run("assess", "--units", "missing.csv", "--visits", VISITS, "--out", directory.resolve("v").toString()));
        assertTrue(err.toString().contains("--units missing.csv: there is no such file; check the path."), err.toString());
        assertNoTrace();
    }

    @Test
    void assessWritesVerdicts() throws IOException {
        Path verdicts = directory.resolve("verdicts.csv");
        assertEquals(0, run("assess", "--units", UNITS, "--visits", VISITS, "--out", verdicts.toString()));
        assertEquals(1330, Files.readAllLines(verdicts).size());
    }

    @Test
    void aRefusedFileEndsWithThreeAndEveryProblemOnStandardError() throws IOException {
        Path visits = Files.writeString(directory.resolve("visits.csv"),
                "unit_id,visited_at,return_db_f,supply_db_f\nU001,2024-05-11T12:46Z,hot,56\nU999,2024-05-11T12:46Z,76,56\n");
        assertEquals(3, run("import", "--units", UNITS, "--visits", visits.toString(), "--data", directory.resolve("d").toString()));
        assertTrue(err.toString().contains("visits.csv, row 2, return_db_f: \"hot\" is given"), err.toString());
        assertTrue(err.toString().contains("visits.csv, row 3, unit_id: \"U999\" is given"), err.toString());
        assertTrue(err.toString().contains("2 problems; nothing was changed."), err.toString());
        assertEquals("", out.toString());
        assertNoTrace();
    }

    @Test
    void importSaysWhatItDid() {
        String data = directory.resolve("data").toString();
        assertEquals(0, run("import", "--units", UNITS, "--visits", VISITS, "--data", data));
        assertEquals(0, run("import", "--visits", VISITS, "--data", data));
        assertEquals("80 units added, 0 changed; 1329 visits stored, 0 were there already.\n"
                + "0 units added, 0 changed; 0 visits stored, 1329 were there already.\n", out.toString());
    }

    @Test
    void whatWasExportedIsThereAlreadyWhenImportedAgain() {
        String data = directory.resolve("data").toString();
        String out1 = directory.resolve("out").toString();
        assertEquals(0, run("import", "--units", UNITS, "--visits", VISITS, "--data", data));
        assertEquals(0, run("export", "--data", data, "--out", out1));
        assertEquals(0, run("import", "--units", out1 + "/units.csv", "--visits", out1 + "/visits.csv", "--data", data));
        assertTrue(out.toString().endsWith("0 units added, 0 changed; 0 visits stored, 1329 were there already.\n"), out.toString());
        assertEquals(2, run("export", "--data", directory.resolve("nowhere").toString(), "--out", out1));
    }

    @Test
    void ownFilesAreNotMixedIntoTheDemo() {
        try (Store store = Store.open(directory)) {
            assertTrue(DemoFleet.load(store));
        }
        assertEquals(2, run("import", "--units", UNITS, "--data", directory.toString()));
        assertTrue(err.toString().contains("holds the demo fleet"), err.toString());
    }

    @Test
    void aDirectoryThatCannotBeWrittenIsSaidInWords() throws IOException {
        Path file = Files.writeString(directory.resolve("file"), "");
        assertEquals(1, run("import", "--units", UNITS, "--data", file.resolve("data").toString()));
        assertTrue(err.toString().startsWith("Cannot read or write: "), err.toString());
        assertEquals(1, run("assess", "--units", UNITS, "--visits", VISITS, "--out", directory.resolve("no/such/v.csv").toString()));
        assertNoTrace();
    }

    /** What is typed when the password is asked for. */
    private int runTyping(String typed, String... args) {
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream((typed + "\n").getBytes(StandardCharsets.UTF_8)));
            return run(args);
        } finally {
            System.setIn(before);
        }
    }

    @Test
    void whoeverCanBeReachedByOthersDoesNotStartWithoutAnAccount() {
        String data = directory.resolve("data").toString();
        assertEquals(2, run("--host", "0.0.0.0", "--port", "0", "--data", data));
        assertEquals(2, run("serve", "--trust-proxy", "--port", "0", "--data", data));
        assertEquals(2, run("serve", "--base-path", "/fleet", "--port", "0", "--data", data));
        assertTrue(err.toString().contains("nobody has an account yet"), err.toString());
        assertTrue(err.toString().contains("longsummer people add NAME --role administrator"), err.toString());
        assertEquals(0, runTyping("pebble lantern oatmeal drift", "people", "add", "Ines Calder", "--depot", "Ferrow Flats", "--data", data));
        assertEquals(2, run("--host", "0.0.0.0", "--port", "0", "--data", data), "a technician cannot let others in");
        assertNoTrace();
    }

    @Test
    void peopleAreAddedListedClosedAndGivenPasswordsOnTheCommandLine() {
        String data = directory.resolve("data").toString();
        assertEquals(2, runTyping("too short", "people", "add", "Ada Merrow", "--role", "administrator", "--data", data));
        assertTrue(err.toString().contains("A password has 12 to 256 characters; this one has 9."), err.toString());
        assertEquals(0, runTyping("pebble lantern oatmeal drift", "people", "add", "Ada Merrow", "--role", "administrator", "--data", data));
        assertEquals(2, runTyping("pebble lantern oatmeal drift", "people", "add", "ada  merrow", "--data", data));
        assertEquals(0, runTyping("kelp mortar vane sixteen", "people", "add", "Ines Calder", "--depot", "Ferrow Flats", "--data", data));
        assertEquals(0, runTyping("thimble orchard ferry", "people", "password", "ines calder", "--data", data));
        assertEquals(0, run("people", "close", "Ines Calder", "--data", data));
        assertEquals(2, run("people", "close", "Ada Merrow", "--data", data));
        assertEquals(2, run("people", "close", "Nobody", "--data", data));
        out.getBuffer().setLength(0);
        assertEquals(0, run("people", "list", "--data", data));
        assertEquals("Ada Merrow\tadministrator\tall depots\nInes Calder\ttechnician\tFerrow Flats\tclosed\n", out.toString());
        assertEquals(2, run("people"));
        assertNoTrace();
    }

    @Test
    void aKeystoreOrABasePathThatCannotBeUsedIsSaidInWords() {
        assertEquals(1, run("serve", "--tls", directory.resolve("none.p12").toString(), "--port", "0", "--data", directory.toString()));
        assertTrue(err.toString().contains("none.p12 is not there"), err.toString());
        assertEquals(2, run("serve", "--base-path", "fleet", "--port", "0", "--data", directory.toString()));
        assertTrue(err.toString().contains("--base-path fleet is given; write a path such as /fleet"), err.toString());
        assertNoTrace();
    }

    private void assertNoTrace() {
        assertFalse(err.toString().contains("\tat ") || err.toString().contains("Exception"), err.toString());
    }
}
