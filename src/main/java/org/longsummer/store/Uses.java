package org.longsummer.store;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * When sessions and programs were last used. Known at once, written soon after by a thread of its own, so that nobody who only looks
 * waits for somebody who writes.
 */
final class Uses implements AutoCloseable {
    /** Finer than this, a use is not worth a write. */
    private static final Duration NOTED_EVERY = Duration.ofMinutes(5);
    private static final int SECONDS_TO_CLOSE = 10;

    private final ConcurrentMap<String, Instant> latest = new ConcurrentHashMap<>();
    private final ExecutorService writing = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "uses");
        thread.setDaemon(true);
        return thread;
    });

    /** The later of what was stored and what was noted since. */
    Instant latest(String id, Instant stored) {
        Instant noted = latest.getOrDefault(id, stored);
        return noted.isAfter(stored) ? noted : stored;
    }

    /** Notes a use; {@code write} is run now and then. */
    void note(String id, Instant stored, Instant now, Runnable write) {
        if (latest(id, stored).isAfter(now.minus(NOTED_EVERY))) {
            return;
        }
        latest.put(id, now);
        writing.execute(write);
    }

    void forget(String id) {
        latest.remove(id);
    }

    @Override
    public void close() {
        writing.shutdown();
        try {
            writing.awaitTermination(SECONDS_TO_CLOSE, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
