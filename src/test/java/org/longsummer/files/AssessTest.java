package org.longsummer.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.FleetProspects;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

class AssessTest {
    private static final Path UNITS = Path.of("src/test/resources/fleet-dev/units.csv");
    private static final Path VISITS = Path.of("src/test/resources/fleet-dev/visits.csv");

    @TempDir
    Path directory;

    private List<String> assess(Path visits) throws IOException, FileRefused {
        Path out = directory.resolve("verdicts.csv");
        Assess.run(UNITS, visits, Optional.empty(), out, new Findings(), Progress.SILENT);
        return Files.readAllLines(out);
    }

    @Test
    void oneRowAVisitInOrderOfTimeWhateverTheOrderOfTheRows() throws IOException, FileRefused {
        List<String> verdicts = assess(VISITS);
        assertEquals("visit_id,unit_id,visited_at,flag,condition,p_steady,p_condenser_fouling,p_evaporator_fouling,p_refrigerant_loss,"
                + "p_compressor_wear,p_capacitor_weak,p_air_recirculation,p_other,p_impact,expected_split_f,expected_split_u_f,"
                + "expected_amps,expected_amps_u,limit_on_p10,limit_on_p50,limit_on_p90", verdicts.get(0));
        assertEquals(1330, verdicts.size());
        List<String> rows = new ArrayList<>(Files.readAllLines(VISITS));
        List<String> shuffled = rows.subList(1, rows.size());
        Collections.shuffle(shuffled, new Random(3));
        assertEquals(verdicts, assess(Files.write(directory.resolve("visits.csv"), rows)));
    }

    @Test
    void manyWorkersSayWhatTheChainSaysOneAfterAnother() throws IOException, FileRefused {
        List<String> expected = assess(VISITS);
        TreeMap<String, Unit> units = new TreeMap<>();
        UnitsFile.read(UNITS, id -> Optional.empty(), new Findings()).forEach((id, unit) -> units.put(id, unit.unit()));
        List<Visit> visits = new ArrayList<>();
        VisitsFile.read(VISITS, units::containsKey, new Findings(), visits::add);
        FleetProspects fleet = new FleetProspects(LifeCurve.RENTAL, Optional.empty());
        TreeMap<String, List<Verdict>> verdicts = new TreeMap<>();
        Assessment.ofFleet(units, visits, verdict -> verdicts.computeIfAbsent(verdict.visit().unitId(), id -> new ArrayList<>()).add(verdict));
        VerdictRows rows = new VerdictRows(fleet, false);
        verdicts.forEach((id, ofUnit) -> rows.unit(units.get(id), ofUnit));
        assertEquals(expected.subList(1, expected.size()), new String(rows.bytes(), StandardCharsets.UTF_8).lines().toList());
        for (int workers : new int[] {1, 7}) {
            Path out = directory.resolve("by-" + workers + ".csv");
            Assess.run(UNITS, VISITS, Optional.empty(), out, workers, new Findings(), Progress.SILENT);
            assertEquals(expected, Files.readAllLines(out));
        }
    }

    @Test
    void aRefusedFileLeavesTheOldVerdictsAlone() throws IOException {
        Path out = Files.writeString(directory.resolve("verdicts.csv"), "old");
        Path broken = Files.writeString(directory.resolve("visits.csv"), "unit_id\nU001\n");
        assertThrows(FileRefused.class, () -> Assess.run(UNITS, broken, Optional.empty(), out, new Findings(), Progress.SILENT));
        assertEquals("old", Files.readString(out));
        assertFalse(Files.exists(directory.resolve("verdicts.csv.part")));
    }
}
