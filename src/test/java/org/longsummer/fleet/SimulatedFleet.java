package org.longsummer.fleet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.UnitsFile;
import org.longsummer.files.VisitsFile;

/**
 * A simulated fleet: units, visits and the truth.
 *
 * @param units by their identifiers
 * @param visits in the order of the file
 * @param truth by the visits' identifiers
 */
record SimulatedFleet(Map<String, Unit> units, List<Visit> visits, Map<String, Truth> truth) {
    private static final Path FOLDER = Path.of("src/test/resources/fleet-dev");

    /** 80 units, three seasons, some 1,300 visits. */
    static SimulatedFleet dev() {
        return read(FOLDER);
    }

    static SimulatedFleet read(Path folder) {
        Map<String, Unit> units = new TreeMap<>();
        List<Visit> visits = new ArrayList<>();
        Findings findings = new Findings();
        try {
            UnitsFile.read(folder.resolve("units.csv"), id -> Optional.empty(), findings).forEach((id, unit) -> units.put(id, unit.unit()));
            VisitsFile.read(folder.resolve("visits.csv"), units::containsKey, findings, visits::add);
            findings.refuseIfAny();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FileRefused e) {
            throw new IllegalStateException(e);
        }
        return new SimulatedFleet(units, visits, Truth.read(folder.resolve("truth.csv")));
    }

    /** The same fleet with every visit changed. */
    SimulatedFleet with(UnaryOperator<Visit> change) {
        return new SimulatedFleet(units, visits.stream().map(change).toList(), truth);
    }

    /** Verdicts by the visits' identifiers. */
    Map<String, Verdict> judged() {
        Map<String, Verdict> verdicts = new TreeMap<>();
        Assessment.ofFleet(units, visits, verdict -> verdicts.put(verdict.visit().id(), verdict));
        return verdicts;
    }

    Scoring scored() {
        return new Scoring(this, judged());
    }
}
