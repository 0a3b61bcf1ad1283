package org.longsummer;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.longsummer.store.KeptBackups;
import org.longsummer.store.Trouble;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Copies the record every so many hours while it is served. When it is due is told by the copies that are there, so that a restart
 * neither forgets a copy nor makes one too many; one that failed is tried again soon.
 */
final class BackupSchedule implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(BackupSchedule.class);
    private static final Duration LOOKING_EVERY = Duration.ofMinutes(1);
    private static final int LATE_FACTOR = 2;

    private final Path data;
    private final Optional<KeptBackups> backups;
    private final Duration every;
    private final Clock clock;
    private final ScheduledExecutorService looking = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "backup");
        thread.setDaemon(true);
        return thread;
    });

    /** @param backups where copies go; none are made without */
    BackupSchedule(Path data, Optional<KeptBackups> backups, Duration every, Clock clock) {
        this.data = data;
        this.backups = backups;
        this.every = every;
        this.clock = clock;
    }

    BackupSchedule start() {
        backups.ifPresent(copies -> looking.scheduleWithFixedDelay(() -> look(copies), 0, LOOKING_EVERY.toMillis(), TimeUnit.MILLISECONDS));
        return this;
    }

    /** Makes a copy when one is due; never throws, since the schedule would end with it. */
    void look(KeptBackups copies) {
        Instant now = clock.instant();
        try {
            if (isOlderThan(copies, every, now)) {
                long began = System.nanoTime();
                Path copy = copies.take(data, now);
                LOG.atInfo().addKeyValue("file", copy.getFileName()).addKeyValue("ms", (System.nanoTime() - began) / 1_000_000).log("backup");
            }
        } catch (IOException | RuntimeException e) {
            LOG.atError().addKeyValue("trouble", Trouble.in(e).map(Trouble::word).orElse("unknown")).setCause(e).log("backup failed");
        }
    }

    /** A clock that was set back makes the newest copy one of tomorrow; then a copy is due too. */
    private static boolean isOlderThan(KeptBackups copies, Duration age, Instant now) throws IOException {
        Optional<Instant> newest = copies.newest();
        return newest.isEmpty() || newest.get().plus(age).isBefore(now) || newest.get().isAfter(now.plus(age));
    }

    /** What is wrong with the copies, as sentences. */
    List<String> troubles() {
        try {
            return backups.isPresent() && isOlderThan(backups.get(), every.multipliedBy(LATE_FACTOR), clock.instant())
                    ? List.of("The last backup is older than it should be, or none was ever made; see the log.") : List.of();
        } catch (IOException e) {
            return List.of("The directory of backups cannot be read.");
        }
    }

    @Override
    public void close() {
        looking.shutdown();
        try {
            looking.awaitTermination(LOOKING_EVERY.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
