package org.longsummer.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.Import;
import org.longsummer.files.Progress;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Store;

/** The invented rental fleet, the same each time it is made. */
public final class DemoFleet {
    public static final String UNITS = "units.csv";
    public static final String VISITS = "visits.csv";
    /** First of the three seasons in the stored files. */
    static final int STORED_FIRST_YEAR = 2023;
    /** The machine that took the place of the one which is found dead. */
    private static final String NEW_MACHINE = "FF-17";
    private static final int SEASON_IS_OVER_IN = 10;
    private static final long START = 20_230_501;

    private final List<FleetUnit> units = new ArrayList<>();
    private final List<InventedVisit> visits = new ArrayList<>();

    private final int firstYear;
    private Optional<Successor> successor = Optional.empty();

    private DemoFleet(int firstYear) {
        this.firstYear = firstYear;
        settle("FF", DemoUnits.FERROW_FLATS, DemoUnits.FERROW_STORIES);
        settle("LO", DemoUnits.LAKE_ORRIN, DemoUnits.ORRIN_STORIES);
        settle("SP", DemoUnits.SALTMARCH_POINT, DemoUnits.SALTMARCH_STORIES);
        visits.sort(Comparator.comparing((InventedVisit visit) -> visit.at().toInstant())
                .thenComparing(visit -> visit.cells().get("unit_id")));
    }

    /**
     * Fills an empty store with the demo fleet and marks it. The stored seasons are moved by whole years, so that the last of them is
     * the last one that is over.
     *
     * @return false, and nothing is changed, when anything is stored
     */
    public static boolean load(Store store) {
        if (!store.demo().begin()) {
            return false;
        }
        try {
            Path directory = Files.createTempDirectory("longsummer-demo");
            try {
                fill(store, directory, lastSeasonBefore(LocalDate.ofInstant(store.clock().instant(), ZoneOffset.UTC)));
            } finally {
                Files.deleteIfExists(directory.resolve(UNITS));
                Files.deleteIfExists(directory.resolve(VISITS));
                Files.deleteIfExists(directory);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FileRefused e) {
            throw new IllegalStateException("the demo fleet does not read its own files: " + e.getMessage(), e);
        }
        return true;
    }

    private static void fill(Store store, Path directory, int lastYear) throws IOException, FileRefused {
        DemoFleet fleet = new DemoFleet(lastYear - History.SEASONS + 1);
        fleet.write(directory, UnaryOperator.identity());
        Import.run(store, Optional.of(directory.resolve(UNITS)), Optional.of(directory.resolve(VISITS)), "", new Findings(), Progress.SILENT);
        List.of(DemoUnits.FERROW_FLATS, DemoUnits.LAKE_ORRIN, DemoUnits.SALTMARCH_POINT)
                .forEach(place -> store.depots().save(place.depot()));
        DemoOffice.workIn(store, fleet.successor, lastYear);
    }

    /**
     * Writes the demo fleet as {@code units.csv} and {@code visits.csv}.
     *
     * @param directory made when it is not there
     */
    public static void write(Path directory) throws IOException {
        DemoFleet fleet = new DemoFleet(STORED_FIRST_YEAR);
        fleet.write(directory, unit -> DemoOffice.atTheEnd(unit, fleet.successor));
    }

    private static int lastSeasonBefore(LocalDate today) {
        return today.getMonthValue() >= SEASON_IS_OVER_IN ? today.getYear() : today.getYear() - 1;
    }

    private void write(Path directory, UnaryOperator<FleetUnit> listed) throws IOException {
        try (FleetFiles files = new FleetFiles(directory)) {
            units.forEach(unit -> files.unit(listed.apply(unit)));
            int number = 0;
            for (InventedVisit visit : visits) {
                number++;
                files.visit("D%04d".formatted(number), visit);
            }
        }
    }

    private void settle(String prefix, Place place, List<Story> stories) {
        for (int i = 0; i < stories.size(); i++) {
            String id = "%s-%02d".formatted(prefix, i + 1);
            Random chance = new Random(START + id.hashCode());
            Machine machine = machine(prefix, i, id, place, stories.get(i), chance);
            units.add(machine.unit());
            List<InventedVisit> ofUnit = History.of(machine, place, stories.get(i), firstYear, chance);
            Optional<Successor> next = Successor.of(machine.unit(), NEW_MACHINE, ofUnit);
            visits.addAll(next.map(taken -> taken.shared(ofUnit)).orElse(ofUnit));
            successor = successor.or(() -> next);
        }
        successor.filter(taken -> taken.oldId().startsWith(prefix)).ifPresent(taken -> units.add(taken.unit()));
    }

    /** Of each four units two sit alone on a van and two share a coach. */
    private static Machine machine(String prefix, int i, String id, Place place, Story story, Random chance) {
        boolean coach = i % 4 > 1;
        boolean front = i % 2 == 0;
        String vehicle = (coach ? "Coach " : "Van ") + prefix + (coach && !front ? i : i + 1);
        String owner = story.kit() == Story.Kit.THERMOMETER ? "Mirre Aldane" : "Ferrow Rentals";
        return coach ? Inventory.draw(id, vehicle + (front ? " front" : " rear"), vehicle, front ? "front" : "rear", owner, place, chance)
                : Inventory.draw(id, vehicle, vehicle, "middle", owner, place, chance);
    }
}
