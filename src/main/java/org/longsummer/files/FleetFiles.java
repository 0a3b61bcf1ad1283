package org.longsummer.files;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The files of a fleet that are brought together, in our own form: at most one of each kind. */
public final class FleetFiles {
    private final Map<FileKind, Path> files = new EnumMap<>(FileKind.class);

    FleetFiles() {}

    static FleetFiles of(Optional<Path> units, Optional<Path> visits) {
        FleetFiles files = new FleetFiles();
        units.ifPresent(path -> files.put(FileKind.UNITS, path));
        visits.ifPresent(path -> files.put(FileKind.VISITS, path));
        return files;
    }

    /** @return false, and nothing is changed, when there is one of the kind already */
    boolean put(FileKind kind, Path file) {
        return files.putIfAbsent(kind, file) == null;
    }

    Optional<Path> of(FileKind kind) {
        return Optional.ofNullable(files.get(kind));
    }
}
