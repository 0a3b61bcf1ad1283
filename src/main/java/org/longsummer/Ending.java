package org.longsummer;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * The end of serving. A termination signal tells the thread that serves, and the process then lives until that thread says that the
 * record is closed.
 */
final class Ending {
    private static final long LONGEST_SECONDS = 60;

    private final CountDownLatch told = new CountDownLatch(1);
    private final CountDownLatch over = new CountDownLatch(1);

    Ending() {
        Runtime.getRuntime().addShutdownHook(new Thread(this::tell));
    }

    private void tell() {
        told.countDown();
        try {
            over.await(LONGEST_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits for the signal. */
    void await() throws InterruptedException {
        told.await();
    }

    /** Everything is closed. */
    void isOver() {
        over.countDown();
    }
}
