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
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longsummer.access.Reach;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.quantity.Altitude;
import org.longsummer.store.Depot;
import org.longsummer.store.Intake;
import org.longsummer.store.PriceScope;
import org.longsummer.store.Store;

/** Files as spreadsheets of many countries make them are understood, or what they leave open is asked; nothing is guessed. */
class HandoverTest {
    private static final String UNITS = "unit_id,site,nominal_btuh,rated_amps\nHERON-7,Quarry Bend,13500,12.4\nWREN-2,Quarry Bend,15000,13.1\n";
    private static final String VISITS = "unit_id;visited_at;return_db_f;supply_db_f;return_rh_pct;amps;notes\n";

    @TempDir
    Path directory;
    private Store store;

    @BeforeEach
    void open() throws IOException {
        store = Store.open(directory.resolve("data"));
        store.depots().save(new Depot("Quarry Bend", Optional.of(new Altitude(300)), Optional.of(ZoneId.of("America/Denver")), Optional.empty()));
        Files.createDirectory(directory.resolve("work"));
    }

    @AfterEach
    void close() {
        store.close();
    }

    private Handover handover(Path... files) {
        return new Handover(store, Reach.EVERYWHERE, "Moss", List.of(files), directory.resolve("work"));
    }

    private Path file(String name, String text, Charset charset) throws IOException {
        return Files.write(directory.resolve(name), text.getBytes(charset));
    }

    private Path file(String name, String text) throws IOException {
        return file(name, text, StandardCharsets.UTF_8);
    }

    private static Answers said(String... keysAndValues) {
        Map<String, String> said = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            said.put(keysAndValues[i], keysAndValues[i + 1]);
        }
        return new Answers(said, Optional.empty());
    }

    private Understood understood(Path file, Answers answers) throws IOException {
        return handover(file).understand(List.of(answers), Progress.SILENT).get(0);
    }

    private Intake.Report taken(Answers answers, Path... files) throws IOException, FileRefused {
        Handover handover = handover(files);
        handover.understand(java.util.Collections.nCopies(files.length, answers), Progress.SILENT);
        assertEquals(Map.of(), handover.questions());
        return handover.take(new Findings(), Progress.SILENT);
    }

    private List<Outcome> tried(Answers answers, Path... files) throws IOException {
        Handover handover = handover(files);
        handover.understand(java.util.Collections.nCopies(files.length, answers), Progress.SILENT);
        assertEquals(Map.of(), handover.questions());
        List<Outcome> outcomes = new ArrayList<>();
        handover.tryOut(Progress.SILENT, outcomes::add);
        return outcomes;
    }

    private static String counts(List<Outcome> outcomes) {
        return outcomes.stream().collect(Collectors.groupingBy(outcome -> outcome.becomes().word(), java.util.TreeMap::new, Collectors.counting())).toString();
    }

    private void bringUnits() throws IOException, FileRefused {
        taken(Answers.NONE, file("units.csv", UNITS));
    }

    private Visit onlyVisit() {
        List<Visit> visits = store.visits().current("HERON-7");
        assertEquals(1, visits.size());
        return visits.get(0);
    }

    /** The same visit, however a spreadsheet writes it. */
    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "mark", "UTF-16LE", "UTF-16BE", "UTF-16"})
    void aGermanSpreadsheetsFileIsUnderstood(String form) throws IOException, FileRefused {
        bringUnits();
        String text = "\uFEFF" + VISITS + "HERON-7;18.07.2026 11:30;78,5;57,5 \u00b0F;50 %;12,1 A;\u00dcberpr\u00fcft;;\n;;;;;;;;\n\n";
        Path file = switch (form) {
            case "UTF-8" -> file("v.csv", text.substring(1));
            case "mark" -> file("v.csv", text);
            case "UTF-16" -> file("v.csv", text.substring(1), StandardCharsets.UTF_16LE);
            default -> file("v.csv", text, Charset.forName(form));
        };
        taken(Answers.NONE, file);
        assertEquals(Instant.parse("2026-07-18T17:30:00Z"), onlyVisit().at(), "in the depot's own time");
        assertEquals(78.5, onlyVisit().readings().returnDryBulb().orElseThrow().fahrenheit(), 1e-9);
        assertEquals(12.1, onlyVisit().readings().amps().orElseThrow().amperes());
        assertEquals("\u00dcberpr\u00fcft", onlyVisit().notes());
    }

    @Test
    void anOlderFormOfLettersIsAskedWithWhatEachWouldSay() throws IOException, FileRefused {
        bringUnits();
        Path file = file("v.csv", VISITS + "HERON-7;2026-07-18T11:30-06:00;78;57;50;12;\u00dcberpr\u00fcft\n", Charset.forName("windows-1252"));
        Question question = understood(file, Answers.NONE).questions().get(0);
        assertEquals(Question.TEXT, question.key());
        assertEquals("\u00dcberpr\u00fcft", question.choices().get(0).reading());
        assertEquals("windows-1252", question.choices().get(0).value());
        assertTrue(question.choices().stream().skip(1).anyMatch(choice -> !choice.reading().equals("\u00dcberpr\u00fcft")));
        taken(said("text", "windows-1252"), file);
        assertEquals("\u00dcberpr\u00fcft", onlyVisit().notes());
    }

    @Test
    void aDateThatCanBeMeantInTwoWaysIsAskedAndNotGuessed() throws IOException, FileRefused {
        bringUnits();
        Path file = file("v.csv", VISITS + "HERON-7;5/6/2026 11:30;78;57;50;12;\n");
        Question question = understood(file, Answers.NONE).questions().get(0);
        assertEquals(Question.DATES, question.key());
        assertEquals("5/6/2026 11:30|2|visited_at", question.example() + "|" + question.row() + "|" + question.column());
        assertEquals(List.of("5 June 2026", "6 May 2026"), question.choices().stream().map(Question.Choice::reading).toList());
        assertThrows(AssertionError.class, () -> taken(Answers.NONE, file));
        taken(said("dates", "month_first"), file);
        assertEquals(LocalDate.of(2026, 5, 6), onlyVisit().localDay());
    }

    @ParameterizedTest
    @CsvSource({"25/6/2026 1:05 PM,2026-06-25T19:05:00Z", "6/25/2026 1:05 PM,2026-06-25T19:05:00Z", "2026/6/25 13:05,2026-06-25T19:05:00Z",
        "25-Jun-26 13:05,2026-06-25T19:05:00Z", "'Jun 25, 2026 13:05:30',2026-06-25T19:05:30Z", "25.6.26 13:05,2026-06-25T19:05:00Z",
        "46198.5,2026-06-25T18:00:00Z", "6/25/2026 13:05 +02:00,2026-06-25T11:05:00Z"})
    void aDateThatCanBeMeantInOneWayIsUnderstood(String written, String meant) throws IOException, FileRefused {
        bringUnits();
        taken(Answers.NONE, file("v.csv", VISITS + "HERON-7;" + written + ";78;57;50;12;\n"));
        assertEquals(Instant.parse(meant), onlyVisit().at());
    }

    @Test
    void oneRowThatShowsTheOrderSettlesItForAll() throws IOException, FileRefused {
        bringUnits();
        taken(Answers.NONE, file("v.csv", VISITS + "HERON-7;5/6/2026 11:30;78;57;50;12;\nWREN-2;17/6/2026 11:30;78;57;50;12;\n"));
        assertEquals(LocalDate.of(2026, 6, 5), onlyVisit().localDay());
    }

    @Test
    void aNumberThatCanBeMeantInTwoWaysIsAsked() throws IOException, FileRefused {
        Path file = file("units.csv", "unit_id;nominal_btuh\nHERON-7;13,500\n");
        Question question = understood(file, Answers.NONE).questions().get(0);
        assertEquals(Question.DECIMAL, question.key());
        assertEquals(List.of("this is 13500", "this is 13.500"), question.choices().stream().map(Question.Choice::reading).toList());
        taken(said("decimal", "point"), file);
        assertEquals(13_500, store.units().find("HERON-7").orElseThrow().unit().plate().nominal().orElseThrow().btuPerHour(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"13.500 Btu/h|12,4 A", "13 500|12,4", "13500|12.4 amps", "13'500|12.4", "13,500.0|12.4", "1.350e4|12.4",
        "=\"13500\"|12.4"})
    void aNumberThatCanBeMeantInOneWayIsUnderstood(String btu, String amps) throws IOException, FileRefused {
        taken(Answers.NONE, file("units.csv", "unit_id\tnominal_btuh\trated_amps\nHERON-7\t" + btu.replace("\"", "\"\"").replaceAll("(.*\"\".*)", "\"$1\"")
                + "\t" + amps + "\n"));
        assertEquals(13_500, store.units().find("HERON-7").orElseThrow().unit().plate().nominal().orElseThrow().btuPerHour(), 1e-6);
        assertEquals(12.4, store.units().find("HERON-7").orElseThrow().unit().plate().ratedAmps().orElseThrow().amperes());
    }

    @Test
    void aUnitOfMeasureThatIsNotTheColumnsIsRefused() throws IOException, FileRefused {
        bringUnits();
        List<Outcome> outcomes = tried(Answers.NONE, file("v.csv", VISITS + "HERON-7;2026-07-18T11:30-06:00;25 \u00b0C;57;50;12;\n"));
        assertEquals("{refused=1}", counts(outcomes));
        assertEquals("25 \u00b0C", outcomes.get(0).problems().get(0).given());
    }

    @Test
    void clockTimesOfAnUnknownPlaceAreAsked() throws IOException, FileRefused {
        taken(Answers.NONE, file("units.csv", "unit_id,site\nHERON-7,Elsewhere\n"));
        Path file = file("v.csv", VISITS + "HERON-7;2026-07-18 11:30;78;57;50;12;\n");
        assertEquals(Question.ZONE, understood(file, Answers.NONE).questions().get(0).key());
        taken(said("zone", "Australia/Sydney"), file);
        assertEquals(Instant.parse("2026-07-18T01:30:00Z"), onlyVisit().at());
    }

    @Test
    void theFleetsOwnColumnNamesAreMappedOnceAndRemembered() throws IOException, FileRefused {
        bringUnits();
        String header = "Asset No.,Checked on,Return (\u00b0F),Vent temp,Amp draw,Colour\n";
        Path first = file("june.csv", header + "HERON-7,2026-06-25 13:05,78,57.5,12.1,red\n");
        Understood asked = understood(first, Answers.NONE);
        assertEquals(List.of(Question.COLUMNS), asked.questions().stream().map(Question::key).toList());
        assertEquals(List.of("unit_id", "visited_at", "return_db_f", "supply_db_f", "amps", ""),
                asked.columns().stream().map(Understood.Column::meaning).toList());
        assertEquals(new Intake.Report(0, 0, 1, 0, List.of()), taken(new Answers(Map.of(), Optional.of(List.of("unit_id", "visited_at", "return_db_f",
                "supply_db_f", "amps", ""))), first));
        Path second = file("july.csv", header + "WREN-2,2026-07-25 13:05,78,57.5,12.1,blue\n");
        Understood remembered = understood(second, Answers.NONE);
        assertTrue(remembered.isRemembered());
        assertEquals(new Intake.Report(0, 0, 1, 0, List.of()), taken(Answers.NONE, second));
        assertEquals(new Intake.Report(0, 0, 0, 1, List.of()), taken(Answers.NONE, first), "again changes nothing");
    }

    @Test
    void problemsNameTheFilesOwnColumnsAndRows() throws IOException, FileRefused {
        bringUnits();
        Path file = file("v.csv", "sep=;\nAsset No.;Checked on;Return (\u00b0F);Vent temp\n;;;\nHERON-7;2026-06-25 13:05;abc;57\nNOBODY;2026-06-25 13:05;78;57\n"
                + "HERON-7;2026-06-25 14:05;78\n");
        List<Outcome> outcomes = tried(said("columns", "proposed"), file);
        assertEquals(List.of("6||", "4|Return (\u00b0F)|abc", "5|Asset No.|NOBODY"), outcomes.stream()
                .map(outcome -> outcome.row() + "|" + outcome.problems().get(0).column() + "|" + outcome.problems().get(0).given()).toList());
        FileRefused refused = assertThrows(FileRefused.class, () -> taken(said("columns", "proposed"), file));
        assertTrue(refused.count() >= 1, refused.getMessage());
        assertEquals(0, store.visits().count());
    }

    @Test
    void aDryRunSaysRowByRowWhatWouldHappenAndChangesNothing() throws IOException, FileRefused {
        bringUnits();
        Path file = file("units.csv", "unit_id,site,rated_amps,rated_volts\nHERON-7,Quarry Bend,12.4,\nWREN-2,Quarry Bend,13.4,\nDOVE-1,Quarry Bend,12,\n"
                + "LARK-3,Quarry Bend,twelve,\n");
        List<Outcome> outcomes = tried(Answers.NONE, file);
        assertEquals(List.of("same", "changed", "new", "refused"), outcomes.stream().map(outcome -> outcome.becomes().word()).toList());
        assertEquals(List.of(new Outcome.Change("rated_amps", "13.1", "13.4")), outcomes.get(1).changes());
        assertEquals("units.csv, row 5: refused; rated_amps: \"twelve\" is given; write a number such as 12.4, or leave it empty when it was not read",
                outcomes.get(3).text());
        assertEquals(2, store.units().count());
    }

    @Test
    void depotsPricesAndWorkComeInAndChangeNothingTheSecondTime() throws IOException, FileRefused {
        bringUnits();
        Path depots = file("depots.csv", "site,altitude_m\nQuarry Bend,310\nFerrow Flats,20\n");
        Path prices = file("prices.csv", "scope,name,key,value\n,,currency,EUR\nfleet,,shop_rate,140\ndepot,Quarry Bend,shop_rate,155.5\n");
        Path work = file("work.csv", "unit_id,works,planned_for,price,note\nHERON-7,condenser coil,2026-08-01,120,before the heat\n");
        assertEquals("{changed=1, new=5}", counts(tried(Answers.NONE, depots, prices, work)));
        taken(Answers.NONE, depots, prices, work);
        assertEquals(310, store.depots().named("Quarry Bend").orElseThrow().altitude().orElseThrow().metres());
        assertEquals(ZoneId.of("America/Denver"), store.depots().named("Quarry Bend").orElseThrow().timeZone().orElseThrow(), "what is left open stays");
        assertEquals("EUR", store.prices().currency());
        assertEquals(155.5, store.prices().given(PriceScope.depot("Quarry Bend")).number(PriceKey.SHOP_RATE));
        assertEquals("120.00", store.plans().toDo("HERON-7").get(0).price().orElseThrow().number());
        assertEquals("{same=6}", counts(tried(Answers.NONE, depots, prices, work)));
        int journal = store.journal().count();
        taken(Answers.NONE, depots, prices, work);
        assertEquals(journal, store.journal().count(), "the journal has no new line");
    }

    @Test
    void whoSeesOneDepotBringsNothingForAnother() throws IOException, FileRefused {
        bringUnits();
        Handover handover = new Handover(store, Reach.of(List.of("Ferrow Flats")), "Ines", List.of(file("depots.csv", "site,altitude_m\nQuarry Bend,1\n"),
                file("prices.csv", "key,value\nshop_rate,1\n"), file("work.csv", "unit_id,works,planned_for\nHERON-7,filter,2026-08-01\n")),
                directory.resolve("work"));
        handover.understand(List.of(Answers.NONE, Answers.NONE, Answers.NONE), Progress.SILENT);
        List<Outcome> outcomes = new ArrayList<>();
        handover.tryOut(Progress.SILENT, outcomes::add);
        assertEquals("{refused=3}", counts(outcomes));
        assertEquals(3, assertThrows(FileRefused.class, () -> handover.take(new Findings(), Progress.SILENT)).count());
    }

    @Test
    void whatIsStoppedLeavesNothing() throws IOException, FileRefused {
        bringUnits();
        StringBuilder many = new StringBuilder(VISITS);
        for (int i = 0; i < 3000; i++) {
            many.append("HERON-7;2026-07-18T").append(10 + i % 10).append(":").append(10 + i % 50).append(":").append(10 + i % 47)
                    .append("-06:00;78;57;50;12;").append(i).append('\n');
        }
        Path file = file("v.csv", many.toString());
        for (String at : List.of("visits read", "visits judged", "visits stored", "verdicts stored")) {
            Handover handover = handover(file);
            handover.understand(List.of(Answers.NONE), Progress.SILENT);
            Stoppable[] progress = new Stoppable[1];
            int[] steps = {0};
            progress[0] = new Stoppable(what -> {
                steps[0] += what.equals(at) ? 1 : 0;
                if (what.equals(at) && (steps[0] > 1500)) {
                    progress[0].stop();
                    progress[0].step(what);
                }
            });
            assertThrows(Stoppable.Stopped.class, () -> handover.take(new Findings(), progress[0]), at);
            assertEquals(0, store.visits().count(), at);
        }
        assertFalse(store.visits().current("HERON-7").iterator().hasNext());
        assertEquals(3000, taken(Answers.NONE, file).visitsStored());
    }
}
