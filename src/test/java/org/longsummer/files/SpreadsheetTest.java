package org.longsummer.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longsummer.access.Reach;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.Entry;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Store;
import org.longsummer.store.Typed;

/** What people wrote goes into files so that no spreadsheet runs it, and comes back as it was; files are known by what they hold. */
class SpreadsheetTest {
    /** What a spreadsheet may take for a formula. */
    private static final Pattern FORMULA = Pattern.compile("[=+\\-@\\t\\r\\n\\x00\\uFF1D\\uFF0B\\uFF0D\\uFF20].*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

    @TempDir
    private Path directory;

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "=HYPERLINK(\"http://elsewhere.example\",\"x\")", "+49 170", "-5 dirt", "@SUM(1)", "'=1", "''=1", "'", "''", "'a",
        "a=1", "＝1+1", "＋1", "－1", "＠x", "=cmd|' /C calc'!A0", "-", "=", "\"=1\"", "a,b;c\td", "line\none", "=line\none", "'\t=1", "\u0000=1"})
    void aTextComesBackAsItWas(String text) {
        assertEquals(text, Cell.unescaped(Cell.escaped(text)));
        assertFalse(FORMULA.matcher(Cell.escaped(text)).matches());
    }

    @Test
    void everyTextOfAFleetIsExportedHarmlesslyAndImportedWithoutLoss() throws IOException, FileRefused {
        FleetUnit unit = new FleetUnit(new Unit("=unit", "=label()", "@depot", new Plate(Optional.empty(), Optional.of("=R"), Optional.empty(),
                AmpsKind.UNKNOWN, Optional.empty(), false, false, Optional.empty()), AirDelivery.UNKNOWN, Optional.empty(), Altitude.SEA_LEVEL),
                "+make", "-model", "'=serial", "=vehicle", "@roof", "=owner", Optional.empty(), FleetUnit.Duty.IN_SERVICE);
        Visit visit = new Visit("=visit", "=unit", java.time.Instant.parse("2031-06-10T14:00:00Z"), java.time.ZoneOffset.UTC, "@technician",
                Instruments.DEFAULT, new ReadingsBuilder().returnDryBulb(Temperature.fahrenheit(-3)).supplyDryBulb(Temperature.fahrenheit(57)).build(),
                FanSpeed.UNKNOWN, PowerSource.UNKNOWN, FilterLook.NOT_LOOKED, CoilLook.NOT_LOOKED, false, Set.of(), "=note\nsecond line; \"x\"");
        try (Store store = Store.open(directory.resolve("one"))) {
            store.units().save(unit);
            store.judging().save(Entry.of(visit, Typed.nothing(UnitSystem.US), ""));
            Export.run(store, directory.resolve("out"), Progress.SILENT);
        }
        for (String name : List.of("units.csv", "visits.csv")) {
            try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(directory.resolve("out").resolve(name))) {
                for (CsvRecord row : csv) {
                    row.getFields().forEach(cell -> assertTrue(!FORMULA.matcher(cell).matches() || NUMBER.matcher(cell).matches(), name + ": " + cell));
                }
            }
        }
        try (Store store = Store.open(directory.resolve("two"))) {
            Import.run(store, Optional.of(directory.resolve("out/units.csv")), Optional.of(directory.resolve("out/visits.csv")), "", new Findings(),
                    Progress.SILENT);
            assertEquals(Optional.of(unit), store.units().find("=unit"));
            assertEquals(visit.notes(), store.visits().find("=visit").orElseThrow().visit().notes());
            assertEquals("@technician", store.visits().find("=visit").orElseThrow().visit().technician());
        }
    }

    @Test
    void aFileIsKnownByWhatItHolds() throws IOException {
        byte[] workbook = {'P', 'K', 3, 4, 20, 0, 6, 0};
        byte[] older = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0};
        byte[] program = {0x7F, 'E', 'L', 'F', 2, 1, 1, 0, 0};
        for (byte[] content : List.of(workbook, older, program)) {
            Path file = Files.write(directory.resolve("units.csv"), content);
            try (Store store = Store.open(directory.resolve("three"))) {
                FileRefused refused = assertThrows(FileRefused.class,
                        () -> Import.run(store, Optional.of(file), Optional.empty(), "", new Findings(), Progress.SILENT));
                assertEquals(1, refused.problems().size());
                assertTrue(refused.problems().get(0).remedy().contains("CSV"), refused.problems().toString());
            }
        }
        Path named = Files.writeString(directory.resolve("holiday.jpg"), "unit_id,label\nu1,Heron 1\n", StandardCharsets.UTF_16);
        try (Store store = Store.open(directory.resolve("four"))) {
            assertEquals(1, taken(store, named), "a table is a table whatever it is called");
        }
    }

    private static int taken(Store store, Path units) throws IOException {
        try {
            return Import.run(store, Optional.of(units), Optional.empty(), "", new Findings(), Progress.SILENT).unitsAdded();
        } catch (FileRefused refused) {
            throw new IOException(refused);
        }
    }

    @Test
    void filesLeaveAndEnterOnlyWhatSomebodySees() throws IOException, FileRefused {
        Reach ours = Reach.of(List.of("Ferrow Flats"));
        try (Store store = Store.open(directory.resolve("five"))) {
            Path all = Files.writeString(directory.resolve("all.csv"), "unit_id,site\nu1,Ferrow Flats\nu2,Quarry Bend\nu3,\n");
            Path visits = Files.writeString(directory.resolve("v.csv"),
                    "unit_id,visited_at,return_db_f,supply_db_f\nu1,2031-06-10T14:00Z,78,57\nu2,2031-06-10T14:00Z,78,57\n");
            Import.run(store, Optional.of(all), Optional.of(visits), "", new Findings(), Progress.SILENT);
            Export.run(store, ours, directory.resolve("ours"), Progress.SILENT);
            assertEquals(2, Files.readAllLines(directory.resolve("ours/units.csv")).size());
            assertEquals(2, Files.readAllLines(directory.resolve("ours/visits.csv")).size());
            refused(store, ours, "unit_id,label\nu2,Mine now\n", Optional.empty(), "not stand at a depot of yours");
            refused(store, ours, "unit_id,site\nu2,Ferrow Flats\n", Optional.empty(), "this id is taken");
            refused(store, ours, "unit_id,site\nu1,Quarry Bend\n", Optional.empty(), "not stand at a depot of yours");
            refused(store, ours, "unit_id,site\nu9,Ferrow Flats\n", Optional.of(visits), "no unit has this id");
            assertEquals("Quarry Bend", store.units().find("u2").orElseThrow().unit().site());
            assertEquals(3, store.units().count());
        }
    }

    private void refused(Store store, Reach reach, String units, Optional<Path> visits, String because) throws IOException {
        Path file = Files.writeString(directory.resolve("refused.csv"), units);
        FileRefused refused = assertThrows(FileRefused.class,
                () -> Import.run(store, reach, Optional.of(file), visits, "", new Findings(), Progress.SILENT));
        assertTrue(refused.getMessage().contains(because), refused.getMessage());
        assertFalse(refused.getMessage().contains("Quarry Bend") && !units.contains("Quarry Bend"), refused.getMessage());
    }
}
