package org.longsummer.store;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Work that goes on while people work, some at a time, on a thread of its own: rests after each part, looks again now and then, survives trouble. */
public final class BackgroundWork implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(BackgroundWork.class);
    private static final Duration LONGEST_GOODBYE = Duration.ofSeconds(20);

    private final String name;
    private final BooleanSupplier part;
    private final Pace pace;
    private final Thread thread;
    private volatile boolean closing;
    private volatile boolean failed;

    /**
     * How it takes its time.
     *
     * @param rest after a part, by how long that took
     * @param looking until it looks again after there was nothing to do
     * @param afterTrouble until it tries again
     */
    public record Pace(UnaryOperator<Duration> rest, Duration looking, Duration afterTrouble) {}

    /**
     * Nothing is done before {@link #start}.
     *
     * @param name in the log
     * @param part does some of the work; false when there was nothing to do
     */
    public BackgroundWork(String name, BooleanSupplier part, Pace pace) {
        this.name = name;
        this.part = part;
        this.pace = pace;
        thread = new Thread(this::goOn, name);
        thread.setDaemon(true);
    }

    /** From now on, until this is closed. */
    public BackgroundWork start() {
        thread.start();
        return this;
    }

    /** Whether the last part ended in trouble. */
    public boolean hasFailed() {
        return failed;
    }

    private void goOn() {
        while (!closing) {
            Duration pause = doPart();
            if (!closing) {
                LockSupport.parkNanos(pause.toNanos());
            }
        }
    }

    /** Never throws, since the thread would end with it. */
    private Duration doPart() {
        long began = System.nanoTime();
        try {
            boolean done = part.getAsBoolean();
            failed = false;
            return done ? pace.rest().apply(Duration.ofNanos(System.nanoTime() - began)) : pace.looking();
        } catch (RuntimeException e) {
            failed = true;
            LOG.atError().addKeyValue("trouble", Trouble.in(e).map(Trouble::word).orElse("unknown")).setCause(e).log(name + " failed");
            return pace.afterTrouble();
        }
    }

    @Override
    public void close() {
        closing = true;
        LockSupport.unpark(thread);
        try {
            thread.join(LONGEST_GOODBYE.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
