package org.longsummer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.store.Store;

/** Files of the fleet's own on the command line: asked about, tried out, taken in, stopped. */
class ImportCommandTest {
    private static final int MANY = 200_000;

    @TempDir
    Path directory;
    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    private int run(String... args) {
        out = new StringWriter();
        err = new StringWriter();
        return Longsummer.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(directory.resolve(name), text).toString();
    }

    @Test
    void whatAFileLeavesOpenIsAskedTriedTakenAndRemembered() throws IOException {
        String data = directory.resolve("data").toString();
        String units = file("units.csv", "unit_id,site\nHERON-7,Quarry Bend\n");
        String visits = file("june.csv", "Asset No.;Checked on;Return (F);Vent temp (F)\nHERON-7;5/6/2026 11:30;78,5;57,5\n");
        assertEquals(0, run("import", units, "--data", data));
        assertEquals(3, run("import", visits, "--data", data));
        assertTrue(err.toString().contains("dates=month_first"), err.toString());
        assertTrue(err.toString().contains("--column \"Vent temp (F)=supply_db_f\""), err.toString());
        assertTrue(err.toString().contains("Nothing was changed."), err.toString());
        String[] answered = {"import", visits, "--data", data, "--answer", "dates=day_first", "--answer", "zone=America/Denver", "--answer", "columns=proposed"};
        String[] tried = java.util.Arrays.copyOf(answered, answered.length + 1);
        tried[answered.length] = "--try";
        assertEquals(0, run(tried));
        assertEquals("june.csv, row 2, HERON-7 at 2026-06-05T11:30-06:00: new\nIt would be: 1 new, 0 changed, 0 same, 0 refused. Nothing was changed.\n",
                out.toString().replace("\r", ""));
        assertEquals(0, run(answered));
        assertTrue(out.toString().contains("1 visits stored"), out.toString());
        assertEquals(0, run("import", visits, "--data", data), err.toString());
        assertTrue(out.toString().contains("0 visits stored, 1 were there already"), out.toString());
        String wrong = file("july.csv", "Asset No.;Checked on;Return (F);Vent temp (F)\nHERON-7;5/7/2026 11:30;hot;57,5\n");
        assertEquals(3, run("import", wrong, "--data", data, "--try"));
        assertTrue(out.toString().contains("july.csv, row 2: refused; Return (F): \"hot\" is given"), out.toString());
    }

    @Test
    void singleColumnsAreSaidByName() throws IOException {
        String data = directory.resolve("data").toString();
        String units = file("units.csv", "Kennung,Ort\nHERON-7,Quarry Bend\n");
        assertEquals(0, run("import", units, "--data", data, "--answer", "kind=units", "--column", "Kennung=unit_id", "--column", "Ort=site"), err.toString());
        try (Store store = Store.open(Path.of(data))) {
            assertEquals("Quarry Bend", store.units().find("HERON-7").orElseThrow().unit().site());
        }
    }

    /** As Ctrl-C does, the process is asked to end while it stores. */
    @Test
    void anImportThatIsInterruptedLeavesNothing() throws IOException, InterruptedException {
        Path data = directory.resolve("data");
        assertEquals(0, run("import", file("units.csv", "unit_id,site\nHERON-7,Quarry Bend\n"), "--data", data.toString()));
        StringBuilder many = new StringBuilder("visit_id,unit_id,visited_at,return_db_f,supply_db_f\n");
        for (int i = 0; i < MANY; i++) {
            many.append('v').append(i).append(",HERON-7,2026-07-18T11:30:00-06:00,78,57\n");
        }
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", System.getProperty("java.class.path"),
                "org.longsummer.Longsummer", "import", file("many.csv", many.toString()), "--data", data.toString()).start();
        try (BufferedReader said = process.errorReader()) {
            String line = said.readLine();
            while (line != null && !line.contains("visits")) {
                line = said.readLine();
            }
            process.destroy();
            assertTrue(process.waitFor(2, TimeUnit.MINUTES));
            assertNotEquals(0, process.exitValue());
        }
        try (Store store = Store.open(data)) {
            assertEquals(0, store.visits().count());
            assertEquals(1, store.units().count());
        }
    }
}
