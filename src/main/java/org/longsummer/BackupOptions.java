package org.longsummer;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.longsummer.store.KeptBackups;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** When and where the record is copied while it is served. */
final class BackupOptions {
    @Option(names = "--backup-dir", paramLabel = "DIR", description = "directory for copies of the record made while serving; "
            + "without it none are made. Best on another disk")
    private Path directory;

    @Option(names = "--backup-every", paramLabel = "HOURS", defaultValue = "24",
            description = "hours between two copies; default ${DEFAULT-VALUE}")
    private double every;

    @Option(names = "--backup-keep", paramLabel = "N", defaultValue = "14", description = "copies to keep; default ${DEFAULT-VALUE}")
    private int keep;

    /** The schedule, started; it makes no copies when no directory for them is named. */
    BackupSchedule begin(Path data, Clock clock, CommandLine command) {
        if (!(every > 0 && every <= 8_784)) {
            throw new ParameterException(command, "--backup-every " + every + " is given; write hours, more than 0 and at most 8784.");
        }
        if (keep < 1) {
            throw new ParameterException(command, "--backup-keep " + keep + " is given; write a number from 1 on.");
        }
        return new BackupSchedule(data, Optional.ofNullable(directory).map(place -> new KeptBackups(place, keep)),
                Duration.ofSeconds(Math.max(1, (long) (every * 3_600))), clock).start();
    }
}
