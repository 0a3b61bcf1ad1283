package org.longsummer.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.FleetProspects;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.PackedFleet;
import org.longsummer.store.PackedVisits;

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
        run(unitsFile, visitsFile, pricesFile, out, Runtime.getRuntime().availableProcessors(), findings, progress);
    }

    static void run(Path unitsFile, Path visitsFile, Optional<Path> pricesFile, Path out, int workers, Findings findings, Progress progress)
            throws FileRefused, IOException {
        Map<String, FleetUnit> fleet = UnitsFile.read(unitsFile, id -> Optional.empty(), findings);
        boolean unitsAreSound = findings.count() == 0;
        try (PackedVisits visits = new PackedVisits()) {
            VisitsFile.read(visitsFile, id -> !unitsAreSound || fleet.containsKey(id), findings, visit -> {
                visits.add(visit);
                progress.step("visits read");
            });
            Optional<PriceList> prices = pricesFile.isPresent() ? Optional.of(PricesFile.read(pricesFile.get(), findings)) : Optional.empty();
            findings.refuseIfAny();
            List<Unit> units = visits.unitIds().stream().map(id -> fleet.get(id).unit()).toList();
            judge(units, visits, prices, out, workers, progress);
        }
    }

    private static void judge(List<Unit> units, PackedVisits visits, Optional<PriceList> prices, Path out, int workers,
            Progress progress) throws IOException {
        ThreadLocal<FleetProspects> prospects = ThreadLocal.withInitial(() -> prospects(prices));
        try (PackedFleet fleet = new PackedFleet(visits, units, workers, progress::steps)) {
            Closings closings = fleet.learn(LocalDate.MAX);
            write(out, bytes -> {
                bytes.write(VerdictRows.header(prices.isPresent()));
                fleet.judge(closings, () -> new VerdictRows(prospects.get(), prices.isPresent()), bytes);
            });
        }
    }

    private static FleetProspects prospects(Optional<PriceList> prices) {
        return new FleetProspects(prices.map(PriceList::life).orElse(LifeCurve.RENTAL), prices);
    }

    private interface Content {
        void into(OutputStream out) throws IOException;
    }

    /** Writes a file that is there whole or not at all; what is no plain file, such as a pipe, is written as it is. */
    private static void write(Path out, Content content) throws IOException {
        if (Files.exists(out) && !Files.isRegularFile(out)) {
            try (OutputStream bytes = Files.newOutputStream(out)) {
                content.into(bytes);
            }
            return;
        }
        Path unfinished = out.resolveSibling(out.getFileName() + ".part");
        try {
            try (OutputStream bytes = Files.newOutputStream(unfinished)) {
                content.into(bytes);
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
