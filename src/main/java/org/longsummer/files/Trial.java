package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.longsummer.access.Reach;
import org.longsummer.store.Depot;
import org.longsummer.store.Entry;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.PlannedWork;
import org.longsummer.store.PriceFigure;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Store;

/** Says row by row what taking files in would do, and does nothing of it. */
final class Trial {
    private final Store store;
    private final Reach reach;
    private final FleetFiles files;
    private final String by;
    private final Progress progress;
    private final Consumer<Outcome> outcomes;
    private final List<Problem> pending = new ArrayList<>();
    private final Findings findings = new Findings(this::note);
    private final Set<String> newUnits = new HashSet<>();
    private final Map<String, Boolean> seen = new HashMap<>();
    private boolean hasVisits;
    private boolean unitsAreSound = true;

    /** @param outcomes told of each row in the order of the files */
    Trial(Store store, Reach reach, FleetFiles files, String by, Progress progress, Consumer<Outcome> outcomes) {
        this.store = store;
        this.reach = reach;
        this.files = files;
        this.by = by;
        this.progress = progress;
        this.outcomes = outcomes;
    }

    /** @return remarks that hinder nothing */
    List<String> run() throws IOException {
        hasVisits = store.visits().count() > 0;
        boolean isEmpty = store.units().count() == 0;
        if (files.of(FileKind.UNITS).isPresent()) {
            Path file = files.of(FileKind.UNITS).get();
            UnitsFile.readRows(file, id -> isEmpty ? Optional.empty() : Import.seen(store, reach, id), findings, (unit, row) -> unit(name(file), unit, row));
            refusePending();
        }
        Predicate<String> isKnown = id -> newUnits.contains(id) || !unitsAreSound || seen.computeIfAbsent(id, each -> Import.seen(store, reach, each).isPresent());
        SmallFiles.read(store, reach, files, isKnown, by, findings, new Small());
        refusePending();
        if (files.of(FileKind.VISITS).isPresent()) {
            Path file = files.of(FileKind.VISITS).get();
            VisitsFile.readRows(file, isKnown, by, findings, (entry, row) -> visit(name(file), entry, row));
            refusePending();
        }
        return findings.remarks();
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    /** Problems of one row come one after another; a problem of the next row ends it. */
    private void note(Problem problem) {
        if (!pending.isEmpty() && (pending.get(0).row() != problem.row() || !pending.get(0).file().equals(problem.file()))) {
            refusePending();
        }
        pending.add(problem);
    }

    private void refusePending() {
        if (!pending.isEmpty()) {
            Problem first = pending.get(0);
            outcomes.accept(new Outcome(first.file(), first.row(), "", Outcome.Becomes.REFUSED, List.of(), List.copyOf(pending)));
            unitsAreSound &= files.of(FileKind.UNITS).filter(file -> name(file).equals(first.file())).isEmpty();
            pending.clear();
        }
    }

    private void say(String file, long row, String what, boolean isNew, List<Outcome.Change> changes) {
        refusePending();
        outcomes.accept(new Outcome(file, row, what, isNew ? Outcome.Becomes.NEW : changes.isEmpty() ? Outcome.Becomes.SAME : Outcome.Becomes.CHANGED,
                isNew ? List.of() : changes, List.of()));
        progress.step("rows looked at");
    }

    private void unit(String file, FleetUnit unit, long row) {
        Optional<Problem> beyond = Import.beyond(reach, store, file, row, unit);
        if (beyond.isPresent()) {
            findings.add(beyond.get());
            return;
        }
        newUnits.add(unit.id());
        Optional<FleetUnit> known = store.units().find(unit.id());
        say(file, row, unit.id(), known.isEmpty(), known.map(before -> Outcome.between(UnitColumns.WRITTEN, UnitColumns.cells(before),
                UnitColumns.cells(unit))).orElse(List.of()));
    }

    private void visit(String file, Entry given, long row) {
        Entry entry = given.toMilliseconds();
        Optional<RecordedVisit> known = hasVisits ? store.visits().find(entry.visit().id()) : Optional.empty();
        if (known.isPresent() && !known.get().entry().hasSameContentAs(entry)) {
            findings.add(new Problem(file, row, "visit_id", entry.visit().id(), Import.TAKEN));
            return;
        }
        say(file, row, entry.visit().unitId() + " at " + entry.visit().at().atOffset(entry.visit().offset()), known.isEmpty(), List.of());
    }

    /** Depots, figures and plans. */
    private final class Small implements SmallFiles.Taker {
        @Override
        public void depot(Depot depot, long row) {
            Optional<Depot> known = store.depots().named(depot.name());
            say(name(files.of(FileKind.DEPOTS).orElseThrow()), row, depot.name(), known.isEmpty(), known.map(before ->
                    Outcome.between(DepotsFile.LAYOUT.known(), DepotsFile.cells(before), DepotsFile.cells(depot))).orElse(List.of()));
        }

        @Override
        public void price(PriceFigure figure, long row) {
            Optional<PriceFigure> known = PriceRowsFile.stored(store, figure);
            String whose = figure.scope().name().isEmpty() ? "" : " of " + figure.scope().name();
            say(name(files.of(FileKind.PRICES).orElseThrow()), row, figure.key() + whose, known.isEmpty(), known.map(before ->
                    Outcome.between(PriceRowsFile.LAYOUT.known(), PriceRowsFile.cells(before), PriceRowsFile.cells(figure))).orElse(List.of()));
        }

        @Override
        public void plan(PlannedWork plan, long row) {
            Optional<PlannedWork> known = store.plans().find(plan.id());
            say(name(files.of(FileKind.WORK).orElseThrow()), row, plan.unitId() + " by " + plan.plannedFor(), known.isEmpty(), known.map(before ->
                    Outcome.between(PlansFile.LAYOUT.known(), PlansFile.cells(before), PlansFile.cells(plan))).orElse(List.of()));
        }
    }
}
