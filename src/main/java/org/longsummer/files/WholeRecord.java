package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.access.Reach;
import org.longsummer.store.Business;
import org.longsummer.store.Depot;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Intake;
import org.longsummer.store.Photo;
import org.longsummer.store.PlannedWork;
import org.longsummer.store.PriceFigure;
import org.longsummer.store.PriceScope;
import org.longsummer.store.Quotes;
import org.longsummer.store.Rounds;
import org.longsummer.store.Store;
import org.longsummer.store.Toolkit;
import org.longsummer.store.UnitChange;
import org.longsummer.store.VisitRound;

/**
 * A whole record as CSV files in a directory, out and in again without loss: units, all visits with their corrections and withdrawals,
 * depots, prices, planned work, quotes, rounds and where units stand, what became of units, photos, technicians' instruments, the business. Taking in what is there already changes nothing.
 */
public final class WholeRecord {
    private static final String UNITS = "units.csv";
    private static final String VISITS = "visits.csv";

    private WholeRecord() {}

    /**
     * Writes everything that somebody may see.
     *
     * @param directory made when it is not there; files of these names in it are replaced
     * @throws IOException when they cannot be written
     */
    public static void write(Store store, Reach reach, Path directory, Progress progress) throws IOException {
        Files.createDirectories(directory);
        try (UnitsFile.Writer units = UnitsFile.writer(directory.resolve(UNITS))) {
            store.units().all(reach).forEach(units::add);
        }
        try (VisitsFile.Writer visits = VisitsFile.writer(directory.resolve(VISITS))) {
            store.visits().forEach(reach, visit -> {
                visits.add(visit);
                progress.step("visits written");
            });
        }
        DepotsFile.write(directory.resolve(DepotsFile.NAME), store.depots().all(reach));
        ChangesFile.write(directory.resolve(ChangesFile.NAME), store, reach);
        PhotosFile.write(directory, store, reach, progress);
        PriceRowsFile.write(directory.resolve(PriceRowsFile.NAME), store.prices().all().stream().filter(figure -> sees(store, reach, figure.scope())).toList());
        PlansFile.write(directory.resolve(PlansFile.NAME), store.plans().all().stream()
                .filter(plan -> Import.seen(store, reach, plan.unitId()).isPresent()).toList());
        QuotesFile.write(directory.resolve(QuotesFile.NAME), store.quotes().all().entrySet().stream()
                .filter(quote -> Import.seen(store, reach, quote.getKey()).isPresent()).toList());
        PlacesFile.write(directory.resolve(PlacesFile.NAME), store.rounds().places().entrySet().stream()
                .filter(place -> Import.seen(store, reach, place.getKey()).isPresent()).toList());
        RoundsFile.write(directory.resolve(RoundsFile.NAME), store.rounds().all(reach));
        TechniciansFile.write(directory.resolve(TechniciansFile.NAME), store.technicians().all());
        BusinessFile.write(directory, store.business().read());
    }

    /** What is small enough to be held while the rest is read. */
    private record Rest(List<Depot> depots, List<UnitChange> changes, List<Toolkit> toolkits, List<Business> business, List<Photo> photos,
            List<PriceFigure> prices, List<PlannedWork> plans, Map<String, Quotes.InHand> quotes, Map<String, Rounds.Place> places,
            Map<VisitRound, List<Rounds.Leg>> rounds) {
        Rest() {
            this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(),
                    new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>());
        }
    }

    /**
     * Takes a record in, wholly or not at all. A file that is not there is left out.
     *
     * @throws FileRefused when something in the files has no meaning or contradicts what is stored; nothing is taken in
     * @throws IOException when a file cannot be read; nothing is taken in
     */
    public static Intake.Report read(Store store, Path directory, Findings findings, Progress progress) throws FileRefused, IOException {
        Optional<Path> unitsFile = present(directory, UNITS);
        Optional<Path> visitsFile = present(directory, VISITS);
        Map<String, FleetUnit> units = unitsFile.isEmpty() ? Map.of() : UnitsFile.read(unitsFile.get(), store.units()::find, findings);
        if (visitsFile.isPresent()) {
            VisitsFile.readRecord(visitsFile.get(), id -> isKnown(store, units, id), findings, row -> progress.step("visits read"));
        }
        Rest rest = rest(store, directory, units, findings);
        findings.refuseIfAny();
        Intake.Report report = store.judging().<IOException>takeIn(intake -> {
            rest.depots().forEach(intake::depot);
            units.values().forEach(intake::unit);
            if (visitsFile.isPresent()) {
                takeVisits(visitsFile.get(), intake, progress);
            }
            rest.changes().forEach(intake::change);
            rest.prices().forEach(intake::price);
            rest.plans().forEach(intake::plan);
            rest.quotes().forEach(intake::quote);
            rest.places().forEach(intake::place);
            rest.rounds().forEach(intake::round);
            rest.toolkits().forEach(intake::toolkit);
            rest.business().stream().filter(business -> !business.equals(Business.UNKNOWN)).forEach(intake::business);
            for (Photo photo : rest.photos()) {
                intake.photo(photo, PhotosFile.bytes(directory, photo));
            }
        }, unitId -> progress.step("units judged"));
        report.idsTaken().forEach(id -> findings.add(new Problem(VISITS, 0, "visit_id", id,
                "another visit is stored under this id, or it corrects one that cannot be corrected")));
        findings.refuseIfAny();
        return report;
    }

    private static Rest rest(Store store, Path directory, Map<String, FleetUnit> units, Findings findings) throws IOException {
        Rest rest = new Rest();
        if (present(directory, DepotsFile.NAME).isPresent()) {
            DepotsFile.read(directory.resolve(DepotsFile.NAME), findings, rest.depots()::add);
        }
        if (present(directory, ChangesFile.NAME).isPresent()) {
            ChangesFile.read(directory.resolve(ChangesFile.NAME), id -> isKnown(store, units, id), findings, rest.changes()::add);
        }
        if (present(directory, TechniciansFile.NAME).isPresent()) {
            TechniciansFile.read(directory.resolve(TechniciansFile.NAME), findings, rest.toolkits()::add);
        }
        if (present(directory, PriceRowsFile.NAME).isPresent()) {
            PriceRowsFile.read(directory.resolve(PriceRowsFile.NAME), findings, (figure, row) -> rest.prices().add(figure));
        }
        if (present(directory, PlansFile.NAME).isPresent()) {
            new PlansFile(id -> isKnown(store, units, id), store.plans()::find, "", store.clock().instant(), store.prices().currency())
                    .read(directory.resolve(PlansFile.NAME), findings, (plan, row) -> rest.plans().add(plan));
        }
        if (present(directory, QuotesFile.NAME).isPresent()) {
            QuotesFile.read(directory.resolve(QuotesFile.NAME), id -> isKnown(store, units, id), findings, rest.quotes()::put);
        }
        if (present(directory, PlacesFile.NAME).isPresent()) {
            PlacesFile.read(directory.resolve(PlacesFile.NAME), id -> isKnown(store, units, id), findings, rest.places()::put);
        }
        if (present(directory, RoundsFile.NAME).isPresent()) {
            rest.rounds().putAll(new RoundsFile(id -> isKnown(store, units, id), store.rounds()).read(directory.resolve(RoundsFile.NAME), findings));
        }
        if (present(directory, BusinessFile.NAME).isPresent()) {
            BusinessFile.read(directory, findings, rest.business()::add);
        }
        if (present(directory, PhotosFile.NAME).isPresent()) {
            PhotosFile.read(directory, findings, rest.photos()::add);
        }
        return rest;
    }

    private static boolean sees(Store store, Reach reach, PriceScope scope) {
        return switch (scope.kind()) {
            case FLEET -> true;
            case DEPOT -> reach.includes(scope.name());
            case UNIT -> Import.seen(store, reach, scope.name()).isPresent();
        };
    }

    private static boolean isKnown(Store store, Map<String, FleetUnit> units, String id) {
        return units.containsKey(id) || store.units().find(id).isPresent();
    }

    private static Optional<Path> present(Path directory, String name) {
        return Optional.of(directory.resolve(name)).filter(Files::isRegularFile);
    }

    private static void takeVisits(Path visitsFile, Intake intake, Progress progress) throws IOException {
        Findings second = new Findings();
        VisitsFile.readRecord(visitsFile, id -> true, second, row -> {
            if (row.receivedAt().isPresent()) {
                intake.visit(row.entry(), row.receivedAt().get());
            } else {
                intake.visit(row.entry());
            }
            row.withdrawal().ifPresent(withdrawal -> intake.withdrawn(row.entry().visit().id(), withdrawal));
            progress.step("visits stored");
        });
        if (second.count() > 0) {
            throw new IOException(visitsFile + " was changed while it was read");
        }
    }
}
