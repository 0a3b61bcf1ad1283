package org.longsummer.files;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.UnitProspects;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.store.FleetUnit;

/** Files in, verdicts out, without a store. */
public final class Assess {

    private Assess() {}

    /**
     * Judges all visits of a file and writes one row each, unit by unit in order of time; the order of the rows in the files does not matter.
     *
     * @param pricesFile what work costs; empty when no advice is asked for
     * @param out is there whole or not at all
     * @throws FileRefused when something in the files has no meaning; nothing is written
     * @throws IOException when a file cannot be read or written
     */
    public static void run(Path unitsFile, Path visitsFile, Optional<Path> pricesFile, Path out, Findings findings, Progress progress)
            throws FileRefused, IOException {
        Map<String, FleetUnit> fleet = UnitsFile.read(unitsFile, id -> Optional.empty(), findings);
        List<Visit> visits = new ArrayList<>();
        boolean unitsAreSound = findings.count() == 0;
        VisitsFile.read(visitsFile, id -> !unitsAreSound || fleet.containsKey(id), findings, visit -> {
            visits.add(visit);
            progress.step("visits read");
        });
        Optional<PriceList> prices = pricesFile.isPresent() ? Optional.of(PricesFile.read(pricesFile.get(), findings)) : Optional.empty();
        findings.refuseIfAny();
        Map<String, Unit> units = new HashMap<>();
        fleet.forEach((id, unit) -> units.put(id, unit.unit()));
        Map<String, UnitProspects> prospects = new HashMap<>();
        write(out, prices.isPresent(), file -> Assessment.ofFleet(units, visits, verdict -> {
            file.add(prospects.computeIfAbsent(verdict.visit().unitId(), id -> prospects(units.get(id), prices)).after(verdict));
            progress.step("visits judged");
        }));
    }

    private static UnitProspects prospects(Unit unit, Optional<PriceList> prices) {
        return new UnitProspects(unit, prices.map(PriceList::life).orElse(LifeCurve.RENTAL), SeasonClock.NORTHERN, prices);
    }

    /** Writes a file that is there whole or not at all; what is no plain file, such as a pipe, is written as it is. */
    private static void write(Path out, boolean withAdvice, Consumer<VerdictsFile> rows) throws IOException {
        if (Files.exists(out) && !Files.isRegularFile(out)) {
            try (VerdictsFile file = new VerdictsFile(out, withAdvice)) {
                rows.accept(file);
            }
            return;
        }
        Path unfinished = out.resolveSibling(out.getFileName() + ".part");
        try {
            try (VerdictsFile file = new VerdictsFile(unfinished, withAdvice)) {
                rows.accept(file);
            }
            moveInto(unfinished, out);
        } finally {
            Files.deleteIfExists(unfinished);
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
