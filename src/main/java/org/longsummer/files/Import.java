package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.longsummer.access.Reach;
import org.longsummer.store.Brought;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Intake;
import org.longsummer.store.PackedVisits;
import org.longsummer.store.Store;

/** Takes a fleet's files into a store: wholly or not at all. */
public final class Import {
    static final String TAKEN = "another visit is stored under this id; give this one an id of its own, or correct the stored one on its unit's page";

    private Import() {}

    /**
     * Takes units and visits in and judges what changed. Taking the same files in again changes nothing.
     *
     * @param unitsFile absent when all units are in the store already
     * @param visitsFile absent when there are only units
     * @param savedBy who hands the files over; empty when nobody is signed in
     * @throws FileRefused when something in the files has no meaning or contradicts what is stored; nothing is taken in
     * @throws IOException when a file cannot be read; nothing is taken in
     */
    public static Intake.Report run(Store store, Optional<Path> unitsFile, Optional<Path> visitsFile, String savedBy, Findings findings,
            Progress progress) throws FileRefused, IOException {
        return run(store, Reach.EVERYWHERE, unitsFile, visitsFile, savedBy, findings, progress);
    }

    /** The same for somebody who may not see everything: whatever names a unit or a depot beyond his reach is refused. */
    public static Intake.Report run(Store store, Reach reach, Optional<Path> unitsFile, Optional<Path> visitsFile, String savedBy,
            Findings findings, Progress progress) throws FileRefused, IOException {
        return run(store, reach, FleetFiles.of(unitsFile, visitsFile), savedBy, findings, progress);
    }

    /** Takes in whatever files there are. */
    public static Intake.Report run(Store store, Reach reach, FleetFiles files, String savedBy, Findings findings, Progress progress)
            throws FileRefused, IOException {
        boolean isEmpty = store.units().count() == 0;
        Optional<Path> unitsFile = files.of(FileKind.UNITS);
        Optional<Path> visitsFile = files.of(FileKind.VISITS);
        Map<String, FleetUnit> units = unitsFile.isEmpty() ? Map.of()
                : UnitsFile.read(unitsFile.get(), id -> isEmpty ? Optional.empty() : seen(store, reach, id), findings);
        refuseBeyond(reach, store, units, unitsFile, findings);
        boolean unitsAreSound = findings.count() == 0;
        Predicate<String> isKnown = id -> !unitsAreSound || units.containsKey(id) || seen(store, reach, id).isPresent();
        SmallFiles small = SmallFiles.read(store, reach, files, isKnown, savedBy, findings);
        try (PackedVisits visits = new PackedVisits()) {
            if (visitsFile.isPresent()) {
                VisitsFile.readEntries(visitsFile.get(), isKnown, savedBy, findings, visit -> {
                    visits.add(visit);
                    progress.step("visits read");
                });
            }
            findings.refuseIfAny();
            Intake.Report report = store.judging().takeIn(new Brought(small.depots(), units, visits), intake -> {
                small.prices().forEach(intake::price);
                small.plans().forEach(intake::plan);
            }, progress::steps);
            refuseTaken(report, visitsFile, findings);
            return report;
        }
    }

    /** A unit that is there and that somebody may see. */
    static Optional<FleetUnit> seen(Store store, Reach reach, String unitId) {
        return store.units().find(unitId).filter(unit -> reach.includes(unit.unit().site()));
    }

    /** Why a unit may not be put where the file says; empty when it may. */
    static Optional<Problem> beyond(Reach reach, Store store, String file, long row, FleetUnit unit) {
        if (reach.everywhere()) {
            return Optional.empty();
        }
        if (!reach.includes(unit.unit().site())) {
            return Optional.of(new Problem(file, row, "site", unit.unit().site(), "unit " + unit.id()
                    + " does not stand at a depot of yours; name one of " + String.join(", ", reach.depots())));
        }
        return store.units().find(unit.id()).isPresent() && seen(store, reach, unit.id()).isEmpty()
                ? Optional.of(new Problem(file, row, "unit_id", unit.id(), "this id is taken; give the unit another")) : Optional.empty();
    }

    private static void refuseBeyond(Reach reach, Store store, Map<String, FleetUnit> units, Optional<Path> unitsFile, Findings findings) {
        String file = unitsFile.map(path -> String.valueOf(path.getFileName())).orElse("");
        units.values().forEach(unit -> beyond(reach, store, file, 0, unit).ifPresent(findings::add));
    }

    private static void refuseTaken(Intake.Report report, Optional<Path> visitsFile, Findings findings) throws FileRefused {
        report.idsTaken().forEach(id -> findings.add(new Problem(String.valueOf(visitsFile.orElseThrow().getFileName()), 0, "visit_id",
                id, TAKEN)));
        findings.refuseIfAny();
    }
}
