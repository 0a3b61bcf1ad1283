package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.longsummer.access.Reach;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Store;

/** A store's units and the visits that count, as the files that can be imported. */
public final class Export {
    private Export() {}

    /**
     * Writes {@code units.csv} and {@code visits.csv}.
     *
     * @param directory made when it is not there; files of these names in it are replaced
     * @throws IOException when they cannot be written
     */
    public static void run(Store store, Path directory, Progress progress) throws IOException {
        run(store, Reach.EVERYWHERE, directory, progress);
    }

    /** The same, of the units that somebody may see. */
    public static void run(Store store, Reach reach, Path directory, Progress progress) throws IOException {
        Files.createDirectories(directory);
        try (UnitsFile.Writer units = UnitsFile.writer(directory.resolve("units.csv"))) {
            for (FleetUnit unit : store.units().all(reach)) {
                units.add(unit);
            }
        }
        try (VisitsFile.Writer visits = VisitsFile.writer(directory.resolve("visits.csv"))) {
            store.visits().forEach(reach, visit -> add(visits, visit, progress));
        }
    }

    private static void add(VisitsFile.Writer visits, RecordedVisit visit, Progress progress) {
        if (visit.counts()) {
            visits.add(visit.entry());
            progress.step("visits written");
        }
    }
}
