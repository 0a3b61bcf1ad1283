package org.longsummer.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Decimal;
import org.longsummer.store.Intake;
import org.longsummer.store.Store;
import org.longsummer.store.YardFilter;

/** On real files and a real store. */
class ImportTest {
    private static final Path UNITS = Path.of("src/test/resources/fleet-dev/units.csv");
    private static final Path VISITS = Path.of("src/test/resources/fleet-dev/visits.csv");

    @TempDir
    Path directory;

    private static Intake.Report run(Store store, Path units, Path visits) throws IOException, FileRefused {
        return Import.run(store, Optional.ofNullable(units), Optional.ofNullable(visits), "", new Findings(), Progress.SILENT);
    }

    @Test
    void everythingIsStoredJudgedAndThereAfterARestart() throws IOException, FileRefused {
        try (Store store = Store.open(directory)) {
            assertEquals(new Intake.Report(80, 0, 1329, 0, List.of()), run(store, UNITS, VISITS));
        }
        try (Store store = Store.open(directory)) {
            assertEquals(80, store.standings().count(YardFilter.ALL));
            assertEquals(3, store.depots().all().size());
            List<Visit> visits = store.visits().current("U001");
            assertEquals(visits.stream().map(Visit::id).toList(),
                    store.verdicts().ofUnit("U001").stream().map(verdict -> verdict.visitId()).toList());
            assertEquals("72.8", store.visits().find("V00001").orElseThrow().entry().typed().texts().get("return_db_f"));
        }
    }

    @Test
    void importingAgainChangesNothing() throws IOException, FileRefused {
        try (Store store = Store.open(directory)) {
            run(store, UNITS, VISITS);
            assertEquals(new Intake.Report(0, 0, 0, 1329, List.of()), run(store, UNITS, VISITS));
            assertEquals(1329, store.visits().count());
        }
    }

    @Test
    void aFileWithOneProblemIsRefusedWhole() throws IOException {
        Path broken = Files.writeString(directory.resolve("visits.csv"), Files.readString(VISITS)
                .replace("V00700,", "V00700b,") + "V99999,U001,2022-05-11T12:46:00-07:00,T01,cold" + ",".repeat(20) + "\n");
        try (Store store = Store.open(directory.resolve("data"))) {
            assertEquals(1, assertThrows(FileRefused.class, () -> run(store, UNITS, broken)).count());
            assertEquals(0, store.units().count());
            assertEquals(0, store.visits().count());
        }
    }

    @Test
    void anIdThatHoldsAnotherVisitRefusesTheWholeFile() throws IOException, FileRefused {
        Path more = Files.writeString(directory.resolve("visits.csv"), Files.readString(VISITS).lines().limit(1).findFirst().orElseThrow()
                + "\nnew,U001,2022-05-11T12:46:00-07:00,T01,76,,55" + ",".repeat(18)
                + "\nV00001,U001,2022-05-11T12:46:00-07:00,T01,76,,55" + ",".repeat(18) + "\n");
        try (Store store = Store.open(directory.resolve("data"))) {
            run(store, UNITS, VISITS);
            FileRefused refused = assertThrows(FileRefused.class, () -> run(store, null, more));
            assertTrue(refused.getMessage().contains("\"V00001\" is given; another visit is stored under this id"), refused.getMessage());
            assertEquals(1329, store.visits().count());
            assertTrue(store.visits().find("new").isEmpty());
        }
    }

    @Test
    void aChangedPlateIsTakenOverAndItsUnitJudgedAgain() throws IOException, FileRefused {
        Path changed = Files.writeString(directory.resolve("units.csv"), "unit_id,rated_amps_kind\nU001,rla\nU002,\n");
        try (Store store = Store.open(directory.resolve("data"))) {
            run(store, UNITS, VISITS);
            assertEquals(new Intake.Report(0, 1, 0, 0, List.of()), run(store, changed, null));
            assertEquals(AmpsKind.RLA, store.judging().verdicts("U001").get(0).departure().screening().unit().plate().ratedAmpsKind());
            assertEquals(store.visits().current("U001").size(), store.verdicts().ofUnit("U001").size());
        }
    }

    @Test
    void whatIsStoredIsWhatAssessSays() throws IOException, FileRefused {
        try (Store store = Store.open(directory.resolve("data"))) {
            run(store, UNITS, VISITS);
            assertEquals(assessed(), stored(store));
        }
    }

    @Test
    void aHistoryBroughtInAfterTheFirstVisitsIsLearnedFromInItsOwnOrder() throws IOException, FileRefused {
        List<String> lines = Files.readAllLines(VISITS);
        Path last = Files.write(directory.resolve("last.csv"), List.of(lines.get(0), lines.get(lines.size() - 1)));
        try (Store store = Store.open(directory.resolve("data"))) {
            run(store, UNITS, last);
            run(store, null, VISITS);
            assertEquals(assessed(), stored(store));
        }
    }

    private Map<String, String> assessed() throws IOException, FileRefused {
        Path out = directory.resolve("verdicts.csv");
        Assess.run(UNITS, VISITS, Optional.empty(), out, new Findings(), Progress.SILENT);
        return Files.readAllLines(out).stream().skip(1).map(line -> line.split(",", -1))
                .collect(Collectors.toMap(cells -> cells[0], cells -> String.join(" ", cells[3], cells[4], cells[5], cells[11], cells[13],
                        cells[14], cells[15], cells[16], cells[17])));
    }

    private static Map<String, String> stored(Store store) {
        Map<String, String> verdicts = new HashMap<>();
        store.verdicts().forEach(verdict -> verdicts.put(verdict.visitId(), String.join(" ", verdict.state().word(),
                verdict.condition().word(), Decimal.text(verdict.probabilities().of(Condition.NONE), 5),
                Decimal.text(verdict.probabilities().of(Condition.AIR_RECIRCULATION), 5), Decimal.text(verdict.probabilityOfImpact(), 5),
                verdict.expectedSplit().map(split -> Decimal.text(split.fahrenheit(), 3)).orElse(""),
                verdict.expectedSplitU().map(split -> Decimal.text(split.fahrenheit(), 3)).orElse(""),
                verdict.expectedAmps().map(amps -> Decimal.text(amps.amperes(), 3)).orElse(""),
                verdict.expectedAmpsU().map(amps -> Decimal.text(amps.amperes(), 3)).orElse(""))));
        return verdicts;
    }
}
