package org.longsummer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.store.KeptBackups;
import org.longsummer.store.Store;

/** Copies are made when they are due, however often the server is started, and a copy that is missing is told to whoever asks. */
class BackupScheduleTest {
    private static final Instant START = Instant.parse("2031-06-10T15:00:00Z");

    @TempDir
    Path directory;

    private int copiesAfterALook(Instant now) throws IOException {
        KeptBackups copies = new KeptBackups(directory.resolve("copies"), 3);
        try (BackupSchedule schedule = schedule(now)) {
            schedule.look(copies);
        }
        return copies.copies().size();
    }

    private BackupSchedule schedule(Instant now) {
        return new BackupSchedule(directory.resolve("data"), Optional.of(new KeptBackups(directory.resolve("copies"), 3)), Duration.ofHours(24),
                Clock.fixed(now, ZoneOffset.UTC));
    }

    @Test
    void aCopyIsMadeWhenItIsDueWhateverRestarts() throws IOException {
        Store.open(directory.resolve("data")).close();
        assertEquals(1, copiesAfterALook(START), "the first at once");
        assertEquals(1, copiesAfterALook(START.plus(Duration.ofHours(23))));
        assertEquals(2, copiesAfterALook(START.plus(Duration.ofHours(25))));
        assertEquals(2, copiesAfterALook(START.plus(Duration.ofHours(26))));
        assertEquals(3, copiesAfterALook(START.plus(Duration.ofHours(50))));
        assertEquals(3, copiesAfterALook(START.plus(Duration.ofHours(75))), "the oldest goes");
        assertEquals(3, copiesAfterALook(START.minus(Duration.ofDays(400))), "a clock that was set back does not end the copies");
    }

    @Test
    void aMissingOrFailedCopyIsTold() throws IOException {
        Store.open(directory.resolve("data")).close();
        try (BackupSchedule schedule = schedule(START)) {
            assertFalse(schedule.troubles().isEmpty(), "none yet");
        }
        copiesAfterALook(START);
        try (BackupSchedule schedule = schedule(START.plus(Duration.ofHours(47)))) {
            assertEquals(List.of(), schedule.troubles());
        }
        try (BackupSchedule schedule = schedule(START.plus(Duration.ofHours(49)))) {
            assertFalse(schedule.troubles().isEmpty(), "twice as old as it should be");
        }
        Files.delete(directory.resolve("copies").resolve("longsummer-20310610T150000Z.sqlite"));
        Files.delete(directory.resolve("copies"));
        Files.writeString(directory.resolve("copies"), "a file in the way");
        try (BackupSchedule schedule = schedule(START)) {
            schedule.look(new KeptBackups(directory.resolve("copies"), 3));
            assertFalse(schedule.troubles().isEmpty());
        }
    }

    @Test
    void withoutADirectoryThereIsNothingToTell() {
        try (BackupSchedule schedule = new BackupSchedule(directory, Optional.empty(), Duration.ofHours(24), Clock.systemUTC()).start()) {
            assertEquals(List.of(), schedule.troubles());
        }
    }
}
