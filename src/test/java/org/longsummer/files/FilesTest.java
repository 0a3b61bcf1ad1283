package org.longsummer.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.Entry;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Typed;

/** On real files. */
class FilesTest {
    private static final Path UNITS = Path.of("src/test/resources/fleet-dev/units.csv");
    private static final Path VISITS = Path.of("src/test/resources/fleet-dev/visits.csv");
    private static final String HEADER = "visit_id,unit_id,visited_at,return_db_f,supply_db_f,amps,work_done,notes\n";

    @TempDir
    Path directory;

    private Path file(String text, Charset charset) throws IOException {
        return Files.write(Files.createTempFile(directory, "visits", ".csv"), text.getBytes(charset));
    }

    private List<Visit> visits(String text) throws IOException, FileRefused {
        return visits(file(text, StandardCharsets.UTF_8));
    }

    private static List<Visit> visits(Path file) throws IOException, FileRefused {
        List<Visit> visits = new ArrayList<>();
        Findings findings = new Findings();
        VisitsFile.read(file, id -> !id.equals("nobody"), findings, visits::add);
        findings.refuseIfAny();
        return visits;
    }

    private List<String> problems(String text) {
        return assertThrows(FileRefused.class, () -> visits(text)).problems().stream()
                .map(problem -> problem.text().substring(problem.text().indexOf(problem.row() == 0 ? ":" : ", row"))).toList();
    }

    @Test
    void aFleetOfTwoFilesIsReadWhole() throws IOException, FileRefused {
        Findings findings = new Findings();
        Map<String, FleetUnit> units = UnitsFile.read(UNITS, id -> Optional.empty(), findings);
        findings.refuseIfAny();
        List<Visit> visits = visits(VISITS);
        assertEquals(80, units.size());
        assertEquals(1329, visits.size());
        assertEquals(List.of(), findings.remarks());
        assertEquals(15_000, units.get("U001").unit().plate().nominal().orElseThrow().btuPerHour(), 1e-6);
        Visit first = visits.get(0);
        assertEquals("2020-05-11T19:46:00Z", first.at().toString());
        assertEquals(Optional.of(Temperature.fahrenheit(46.4)), first.readings().supplyDryBulb());
        assertEquals(Optional.of(new Moisture.Relative(RelativeHumidity.percent(28))), first.readings().returnMoisture());
        assertEquals(Optional.of(new Current(60)), first.readings().startPeak());
        assertEquals(AmbientAt.INLET, first.readings().ambientAt());
        assertEquals(5, visits.stream().filter(Visit::icedCoil).count(), "the notes say frost on coil five times");
    }

    @Test
    void orderOfColumnsLineEndsAndByteOrderMarksDoNotMatter() throws IOException, FileRefused {
        List<String> lines = Files.readAllLines(VISITS);
        List<Integer> order = new ArrayList<>(IntStream.range(0, 25).boxed().toList());
        Collections.shuffle(order, new Random(5));
        String shuffled = lines.stream().map(line -> {
            String[] cells = line.split(",", -1);
            return order.stream().map(i -> cells[i]).collect(Collectors.joining(","));
        }).collect(Collectors.joining("\r\n"));
        List<Visit> plain = visits(VISITS);
        assertEquals(plain, visits("\uFEFF" + shuffled + "\r\n"));
        assertEquals(plain, visits(file("\uFEFF" + shuffled, StandardCharsets.UTF_16LE)));
    }

    @Test
    void aSpreadsheetsSemicolonsAndDecimalCommasAreUnderstood() throws IOException, FileRefused {
        Visit visit = visits("visit_id;unit_id;visited_at;return_db_c;supply_db_c;amps\nv1;u1;2024-05-11T12:46:00+02:00;24,5;12,75;11\n").get(0);
        assertEquals(Optional.of(Temperature.celsius(24.5)), visit.readings().returnDryBulb());
        assertEquals(Optional.of(Temperature.celsius(12.75)), visit.readings().supplyDryBulb());
    }

    @Test
    void unitTimeReturnAndSupplyAreEnough() throws IOException, FileRefused {
        String text = "unit_id,visited_at,return_db_f,supply_db_f\nu1,2024-05-11T12:46:00-07:00,76,56\nu1,2024-05-11T12:46:00-07:00,76,57\n";
        List<Visit> visits = visits(text);
        assertEquals(Optional.of(Temperature.fahrenheit(56)), visits.get(0).readings().supplyDryBulb());
        assertEquals(visits, visits(text), "made ids are the same each time");
        assertEquals(2, visits.stream().map(Visit::id).distinct().count());
    }

    @Test
    void extraColumnsAreIgnoredWithARemark() throws IOException {
        Findings findings = new Findings();
        VisitsFile.read(file("mood,unit_id,visited_at,return_db_f,supply_db_f\nfine,u1,2024-05-11T12:46Z,76,56\n", StandardCharsets.UTF_8),
                id -> true, findings, visit -> { });
        assertEquals(0, findings.count());
        assertTrue(findings.remarks().get(0).endsWith("the column \"mood\" is not known and was ignored"), findings.remarks().toString());
    }

    @Test
    void theMerelyImpossibleIsKept() throws IOException, FileRefused {
        Visit visit = visits(HEADER + "v1,u1,2024-05-11T12:46:00-07:00,850,-3000,0.1,none,\n").get(0);
        assertEquals(Optional.of(Temperature.fahrenheit(-3000)), visit.readings().supplyDryBulb());
    }

    @Test
    void workMayBeSeveralWords() throws IOException, FileRefused {
        List<Visit> visits = visits(HEADER + "v1,u1,2024-05-11T12:46Z,76,56,,both_coils+filter,\nv2,u1,2024-05-12T12:46Z,76,56,,,\n");
        assertEquals(Set.of(Work.EVAPORATOR_COIL, Work.CONDENSER_COIL, Work.FILTER), visits.get(0).workDone());
        assertEquals(Set.of(), visits.get(1).workDone());
    }

    @Test
    void everyProblemIsNamedWithRowColumnWhatWasGivenAndWhatToDo() {
        List<String> problems = problems(HEADER
                + "v1,u1,2024-05-11T12:46:00-07:00,warm,56,,none,\n"
                + "v2,,yesterday,76,56,,polished,\n"
                + "v1,nobody,2024-05-11T12:46:00-07:00,76,56,NaN,none,\n"
                + "v4,u1,,\"76,5\",56,1e300,none,\n"
                + "v5,u1,2024-05-11T12:46:00-07:00,76,56,none\n");
        assertEquals(List.of(
                ", row 2, return_db_f: \"warm\" is given; write a number such as 12.4, or leave it empty when it was not read",
                ", row 3, unit_id: name the unit; a visit without one cannot be kept",
                ", row 3, visited_at: \"yesterday\" is given; write day, time and offset from UTC, such as 2024-05-11T12:46:00-07:00; without a time a visit cannot be placed",
                ", row 3, work_done: \"polished\" is given; write none, both_coils, filter, evaporator_coil, condenser_coil, capacitor, divider, fan_motor, sealed_system, unit_replaced, or several of them joined by +",
                ", row 4, unit_id: \"nobody\" is given; no unit has this id; add it to the units or correct it here",
                ", row 4, visit_id: \"v1\" is given; row 2 has the same id; give each visit its own",
                ", row 4, amps: \"NaN\" is given; write a number such as 12.4, or leave it empty when it was not read",
                ", row 5, visited_at: write day, time and offset from UTC, such as 2024-05-11T12:46:00-07:00; without a time a visit cannot be placed",
                ", row 5, return_db_f: \"76,5\" is given; write the number with a decimal point, such as 12.4",
                ", row 5, amps: \"1e300\" is given; write a number such as 12.4, or leave it empty when it was not read",
                ", row 6: it has 6 cells and the header has 8; check for a missing or extra separator, and put text with separators between \""),
                problems);
    }

    @Test
    void manyProblemsAreCountedAndTheFirstListed() {
        FileRefused refused = assertThrows(FileRefused.class, () -> visits(HEADER + "v,,,,,,,\n".repeat(300)));
        assertEquals(200, refused.problems().size());
        assertEquals(300 * 2 + 299, refused.count());
        assertTrue(refused.getMessage().endsWith("and 699 more"), refused.getMessage());
    }

    @Test
    void aFileThatIsNoTableSaysSo() {
        assertTrue(problems("").get(0).contains("there is no header"));
        assertTrue(problems("visit_id,unit_id,visited_at,supply_db_f\n").get(0)
                .contains("row 1, return_db_f: this column is missing; add it (or return_db_c)"));
        assertTrue(problems("unit_id,unit_id,visited_at,return_db_f,supply_db_f\n").get(0).contains("two columns have this name"));
        assertTrue(problems(HEADER + "v1,u1,2024-05-11T12:46Z,76,56,,none,\"windy\n").get(0).contains("cells cannot be told apart"));
    }

    @Test
    void textThatIsNotUtf8IsRefusedNotMangled() throws IOException {
        Path latin = file(HEADER + "v1,u1,2024-05-11T12:46Z,76,56,,none,caf\u00e9\n", StandardCharsets.ISO_8859_1);
        assertTrue(assertThrows(FileRefused.class, () -> visits(latin)).getMessage().contains("not UTF-8"));
    }

    @Test
    void notesThatMentionIceSetIt() {
        for (String note : List.of("frost on coil", "Coil ICED up", "frozen solid", "some ice at the left", "frosted over")) {
            assertTrue(Ice.isMentioned(note), note);
        }
        for (String note : List.of("", "no frost", "checked probes in an ice bath", "not iced", "nice guests", "free of ice", "frost-free",
                "no sign of ice or frost", "device moved", "defrosted yesterday")) {
            assertFalse(Ice.isMentioned(note), note);
        }
    }

    @Test
    void whatWasTypedIsKeptAsTyped() throws IOException {
        List<Entry> entries = new ArrayList<>();
        VisitsFile.readEntries(file("unit_id,visited_at,return_db_c,supply_db_c,amps\nu1,2024-05-11T12:46Z, 24.50,12,\n",
                StandardCharsets.UTF_8), id -> true, "ines", new Findings(), entries::add);
        assertEquals(Map.of("return_db_c", "24.50", "supply_db_c", "12"), entries.get(0).typed().texts());
        assertEquals(UnitSystem.SI, entries.get(0).typed().system());
    }

    @Test
    void unitsWrittenAndReadAreTheSameUnits() throws IOException, FileRefused {
        Findings findings = new Findings();
        Path optional = Files.writeString(directory.resolve("units.csv"), """
                unit_id,label,site,nominal_btuh,altitude_m,rated_amps_kind,serial,vehicle,position,capacitor_label_uf,soft_starter,variable_speed,duty
                1,'=A1,"Depot, north",13500,-17.3,rla_plus_fan,S0I,Van 3,rear,45,yes,,sold
                2,-9,,,,,,,,,,yes,
                """);
        Map<String, FleetUnit> units = new HashMap<>(UnitsFile.read(UNITS, id -> Optional.empty(), findings));
        units.putAll(UnitsFile.read(optional, id -> Optional.empty(), findings));
        findings.refuseIfAny();
        assertEquals("=A1", units.get("1").unit().label());
        Path written = directory.resolve("written.csv");
        try (UnitsFile.Writer writer = UnitsFile.writer(written)) {
            units.values().forEach(writer::add);
        }
        assertEquals(units, UnitsFile.read(written, id -> Optional.empty(), findings));
        assertTrue(Files.readString(written).contains("'=A1"), "a spreadsheet must not run it");
        assertTrue(findings.remarks().get(0).contains("1 units without altitude_ft"), findings.remarks().toString());
    }

    @Test
    void anEmptyCellKeepsWhatIsKnownOfAUnit() throws IOException {
        Findings findings = new Findings();
        FleetUnit known = UnitsFile.read(UNITS, id -> Optional.empty(), findings).get("U001");
        Path partial = Files.writeString(directory.resolve("units.csv"), "unit_id,serial,label\nU001,X1,\n");
        FleetUnit read = UnitsFile.read(partial, id -> Optional.of(known), findings).get("U001");
        assertEquals(known.unit(), read.unit());
        assertEquals("X1", read.serial());
    }

    @Test
    void visitsWrittenAndReadAreTheSameVisits() throws IOException, FileRefused {
        List<Entry> entries = new ArrayList<>();
        Findings findings = new Findings();
        VisitsFile.readEntries(VISITS, id -> true, "", findings, entries::add);
        Visit odd = visits("visit_id,unit_id,visited_at,return_wb_c,return_db_c,supply_db_f,iced_coil,technician,notes\n"
                + "-1,u1,2024-05-11T12:46:07.25+05:45,17.1,24.5,56.7,no,'+Ann,\"no ice,\nbut frost\"\n").get(0);
        entries.add(Entry.of(odd, Typed.nothing(UnitSystem.US), ""));
        Path written = directory.resolve("written.csv");
        try (VisitsFile.Writer writer = VisitsFile.writer(written)) {
            entries.forEach(writer::add);
        }
        List<Entry> again = new ArrayList<>();
        VisitsFile.readEntries(written, id -> true, "", findings, again::add);
        findings.refuseIfAny();
        assertEquals(entries.subList(0, 1329), again.subList(0, 1329));
        assertEquals(odd, again.get(1329).visit());
    }
}
