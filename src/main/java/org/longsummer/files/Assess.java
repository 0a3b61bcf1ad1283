package org.longsummer.files;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Visit;
import org.longsummer.store.FleetUnit;

/** Files in, verdicts out, without a store. */
public final class Assess {
    private static final Comparator<Verdict> BY_TIME = Comparator.comparing((Verdict verdict) -> verdict.visit().at())
            .thenComparing(verdict -> verdict.visit().id());

    private Assess() {}

    /**
     * Judges all visits of a file and writes one row each, in order of time; the order of the rows in the files does not matter.
     *
     * @param out is there whole or not at all
     * @throws FileRefused when something in the files has no meaning; nothing is written
     * @throws IOException when a file cannot be read or written
     */
    public static void run(Path unitsFile, Path visitsFile, Path out, Findings findings, Progress progress)
            throws FileRefused, IOException {
        Map<String, FleetUnit> units = UnitsFile.read(unitsFile, id -> Optional.empty(), findings);
        Map<String, List<Visit>> visits = new TreeMap<>();
        boolean unitsAreSound = findings.count() == 0;
        VisitsFile.read(visitsFile, id -> !unitsAreSound || units.containsKey(id), findings, visit -> {
            visits.computeIfAbsent(visit.unitId(), id -> new ArrayList<>()).add(visit);
            progress.step("visits read");
        });
        findings.refuseIfAny();
        List<Verdict> verdicts = new ArrayList<>();
        Closings closings = new Closings();
        visits.forEach((unitId, ofUnit) -> {
            verdicts.addAll(Assessment.ofUnit(units.get(unitId).unit(), ofUnit, closings));
            progress.step("units judged");
        });
        verdicts.sort(BY_TIME);
        write(verdicts, out);
    }

    private static void write(List<Verdict> verdicts, Path out) throws IOException {
        if (Files.exists(out) && !Files.isRegularFile(out)) {
            write(verdicts, new VerdictsFile(out));
            return;
        }
        Path unfinished = out.resolveSibling(out.getFileName() + ".part");
        try {
            write(verdicts, new VerdictsFile(unfinished));
            moveInto(unfinished, out);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    private static void write(List<Verdict> verdicts, VerdictsFile file) throws IOException {
        try (file) {
            verdicts.forEach(file::add);
        }
    }

    private static void moveInto(Path unfinished, Path out) throws IOException {
        try {
            Files.move(unfinished, out, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(unfinished, out, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
