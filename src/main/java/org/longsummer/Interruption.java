package org.longsummer;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.longsummer.files.Progress;
import org.longsummer.files.Stoppable;

/** While it is open, a termination signal stops the work in hand, and the process lives until that has been undone. */
final class Interruption implements AutoCloseable {
    private static final long LONGEST_SECONDS = 60;

    private final CountDownLatch over = new CountDownLatch(1);
    private final Stoppable progress;
    private final Thread hook;

    /** @param heard told of each step of the work */
    Interruption(Progress heard) {
        progress = new Stoppable(heard);
        hook = new Thread(() -> {
            progress.stop();
            await();
        });
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Of the work that it stops. */
    Stoppable progress() {
        return progress;
    }

    private void await() {
        try {
            over.await(LONGEST_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        over.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the process is ending already
        }
    }
}
