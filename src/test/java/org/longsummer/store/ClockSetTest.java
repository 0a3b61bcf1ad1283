package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.chain.visit.Visit;

/** A server's clock is set back or forward while it runs: nothing is refused for it, nothing is lost, and learning goes on. */
class ClockSetTest {
    @TempDir
    Path directory;

    private final SetClock clock = new SetClock();

    /** A clock that somebody sets. */
    private static final class SetClock extends Clock {
        private Instant now = Instant.EPOCH;

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    private void save(Store store, String now, String id, String visitedAt) {
        clock.now = Instant.parse(now);
        assertInstanceOf(Saving.Stored.class, store.judging().save(Samples.entry(id, "u1", visitedAt)));
    }

    @Test
    void aClockThatIsSetBackClosesNothingTwiceAndLosesNothing() {
        try (Store store = Store.open(directory, clock)) {
            store.units().save(Samples.unit("u1"));
            save(store, "2031-06-10T15:00:00Z", "v1", "2031-06-09T14:00:00Z");
            save(store, "2031-06-12T15:00:00Z", "v2", "2031-06-12T14:00:00Z");
            assertEquals(Optional.of(LocalDate.of(2031, 6, 11)), store.closings().closedThrough());
            save(store, "1970-01-01T00:05:00Z", "v3", "2031-06-12T14:10:00Z");
            save(store, "2031-06-10T15:00:00Z", "v4", "2031-06-10T14:00:00Z");
            save(store, "2031-06-13T15:00:00Z", "v5", "2031-06-13T14:00:00Z");
            assertEquals(List.of("v1", "v4", "v2", "v3", "v5"), store.visits().current("u1").stream().map(Visit::id).toList());
            assertEquals(Optional.of(LocalDate.of(2031, 6, 12)), store.closings().closedThrough());
            assertEquals(Optional.of(LocalDate.of(2031, 6, 12)), store.verdicts().ofVisit("v5").orElseThrow().closing());
        }
    }

    @Test
    void aClockThatRanAheadDoesNotStopTheLearning() {
        try (Store store = Store.open(directory, clock)) {
            store.units().save(Samples.unit("u1"));
            save(store, "2031-06-10T15:00:00Z", "v1", "2031-06-10T14:00:00Z");
            save(store, "2041-06-10T15:00:00Z", "v2", "2031-06-10T14:30:00Z");
            assertEquals(Optional.of(LocalDate.of(2041, 6, 9)), store.closings().closedThrough());
            save(store, "2031-06-10T16:00:00Z", "v3", "2031-06-10T15:30:00Z");
            assertTrue(store.closings().closedThrough().orElseThrow().isBefore(LocalDate.of(2031, 6, 11)));
            save(store, "2031-06-12T16:00:00Z", "v4", "2031-06-12T15:30:00Z");
            assertEquals(Optional.of(LocalDate.of(2031, 6, 11)), store.closings().closedThrough());
            assertEquals(Optional.of(LocalDate.of(2031, 6, 11)), store.closings().all().lastBefore(LocalDate.of(2031, 6, 13)),
                    "the visit that came after the clock was right again was learned from");
        }
    }
}
