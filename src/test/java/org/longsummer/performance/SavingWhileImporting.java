package org.longsummer.performance;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.demo.LargeFleet;
import org.longsummer.files.Findings;
import org.longsummer.files.Import;
import org.longsummer.files.Progress;
import org.longsummer.files.UnitsFile;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.Entry;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Saving;
import org.longsummer.store.Store;
import org.longsummer.store.Typed;

/**
 * How long somebody who saves visits waits while a large file is imported into the same record.
 *
 * <p>Arguments: {@code UNITS VISITS-A-UNIT}. Start it with
 * {@code java -Xmx512m -cp target/longsummer.jar:target/test-classes org.longsummer.performance.SavingWhileImporting 10000 10}.
 */
public final class SavingWhileImporting {
    private static final int SAVED_BEFORE = 200;
    private static final int VISITS_OF_A_UNIT = 10;
    private static final long PAUSE_MILLISECONDS = 50;
    private static final Readings READINGS = new ReadingsBuilder().returnDryBulb(Temperature.fahrenheit(78))
            .returnMoisture(new Moisture.Relative(RelativeHumidity.percent(50))).supplyDryBulb(Temperature.fahrenheit(57.5))
            .ambientDryBulb(Temperature.fahrenheit(92)).amps(new Current(12.1)).build();

    private final Store store;
    private final FleetUnit like;
    private final List<Double> waits = new ArrayList<>();
    private int saved;

    private SavingWhileImporting(Store store, FleetUnit like) {
        this.store = store;
        this.like = like;
    }

    public static void main(String[] arguments) throws Exception {
        Path directory = Files.createTempDirectory("longsummer-performance");
        try {
            LargeFleet.write(directory, Integer.parseInt(arguments[0]), Integer.parseInt(arguments[1]));
            Map<String, FleetUnit> units = UnitsFile.read(directory.resolve("units.csv"), id -> Optional.empty(), new Findings());
            try (Store store = Store.open(directory.resolve("record"))) {
                new SavingWhileImporting(store, units.values().iterator().next()).run(directory);
            }
        } finally {
            AgainstSqlite.delete(directory);
        }
    }

    private void run(Path directory) throws Exception {
        while (saved < SAVED_BEFORE) {
            save();
        }
        print("alone");
        long began = System.nanoTime();
        CompletableFuture<Integer> importing = CompletableFuture.supplyAsync(() -> imported(directory));
        while (!importing.isDone()) {
            save();
            Thread.sleep(PAUSE_MILLISECONDS);
        }
        System.out.printf(Locale.ROOT, "%d visits imported in %.1f s; all of %d visits are there%n", importing.get(),
                (System.nanoTime() - began) / 1e9, store.visits().count());
        print("meanwhile");
    }

    private int imported(Path directory) {
        try {
            return Import.run(store, Optional.of(directory.resolve("units.csv")), Optional.of(directory.resolve("visits.csv")), "", new Findings(),
                    Progress.SILENT).visitsStored();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private void save() {
        long began = System.nanoTime();
        String unitId = "by hand " + saved / VISITS_OF_A_UNIT;
        if (saved % VISITS_OF_A_UNIT == 0) {
            store.units().save(FleetUnit.of(named(unitId)));
        }
        Visit visit = new Visit("by hand " + saved, unitId, Instant.now(), ZoneOffset.UTC, "Ines", Instruments.DEFAULT, READINGS, FanSpeed.HIGH,
                PowerSource.SHORE, FilterLook.CLEAN, CoilLook.CLEAN, false, Set.of(), "");
        saved++;
        if (!(store.judging().save(Entry.of(visit, Typed.nothing(UnitSystem.US), "")) instanceof Saving.Stored)) {
            throw new IllegalStateException("not stored: " + visit.id());
        }
        waits.add((System.nanoTime() - began) / 1e6);
    }

    private Unit named(String id) {
        Unit unit = like.unit();
        return new Unit(id, id, "", unit.plate(), unit.delivery(), unit.installedOn(), unit.altitude());
    }

    private void print(String when) {
        double[] sorted = waits.stream().mapToDouble(wait -> wait).sorted().toArray();
        System.out.printf(Locale.ROOT, "%s: %d saves, median %.0f ms, 99 of 100 within %.0f ms, longest %.0f ms%n", when, sorted.length,
                sorted[sorted.length / 2], sorted[99 * sorted.length / 100], sorted[sorted.length - 1]);
        waits.clear();
    }
}
