package org.longsummer;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.longsummer.store.Store;
import org.longsummer.store.Trouble;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps the advice in the yard's list fresh while it is served: works it out for units that were brought in by the thousand, and again when
 * prices change or days go by. A few at a time, so that nobody who saves a visit waits for it.
 */
final class AdviceSchedule implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(AdviceSchedule.class);
    private static final Duration LOOKING_EVERY = Duration.ofSeconds(2);
    private static final Duration BREATH = Duration.ofMillis(20);

    private final Store store;
    private volatile boolean closed;
    private volatile boolean failed;
    private final ScheduledExecutorService looking = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "advice");
        thread.setDaemon(true);
        return thread;
    });

    AdviceSchedule(Store store) {
        this.store = store;
    }

    AdviceSchedule start() {
        looking.scheduleWithFixedDelay(this::look, 0, LOOKING_EVERY.toMillis(), TimeUnit.MILLISECONDS);
        return this;
    }

    /** Works until nothing is left; never throws, since the schedule would end with it. */
    private void look() {
        try {
            while (!closed && store.judging().adviseAgain() > 0) {
                Thread.sleep(BREATH.toMillis());
            }
            failed = false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException e) {
            failed = true;
            LOG.atError().addKeyValue("trouble", Trouble.in(e).map(Trouble::word).orElse("unknown")).setCause(e).log("advice failed");
        }
    }

    /** What is wrong, as sentences. */
    List<String> troubles() {
        return failed ? List.of("The advice in the yard cannot be kept fresh; see the log.") : List.of();
    }

    @Override
    public void close() {
        closed = true;
        looking.shutdown();
        try {
            looking.awaitTermination(LOOKING_EVERY.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
