package org.longsummer;

import java.time.Duration;
import java.util.List;
import org.longsummer.store.BackgroundWork;
import org.longsummer.store.Store;

/**
 * Keeps the advice in the yard's list fresh while it is served: works it out for units that were brought in by the thousand, and again when
 * prices change or days go by. A few at a time, so that nobody who saves a visit waits for it.
 */
final class AdviceSchedule implements AutoCloseable {
    private static final Duration LOOKING_EVERY = Duration.ofSeconds(2);
    private static final Duration BREATH = Duration.ofMillis(20);

    private final BackgroundWork work;

    AdviceSchedule(Store store) {
        work = new BackgroundWork("advice", () -> store.judging().adviseAgain() > 0, new BackgroundWork.Pace(worked -> BREATH, LOOKING_EVERY, LOOKING_EVERY));
    }

    AdviceSchedule start() {
        work.start();
        return this;
    }

    /** What is wrong, as sentences. */
    List<String> troubles() {
        return work.hasFailed() ? List.of("The advice in the yard cannot be kept fresh; see the log.") : List.of();
    }

    @Override
    public void close() {
        work.close();
    }
}
