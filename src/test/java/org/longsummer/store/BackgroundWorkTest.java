package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** It goes on after trouble, looks again when there was nothing, and stops when it is told to. */
class BackgroundWorkTest {
    private static final BackgroundWork.Pace QUICK = new BackgroundWork.Pace(worked -> Duration.ZERO, Duration.ofMillis(1), Duration.ofMillis(1));
    private static final int PATIENCE = 20;

    @Test
    void goesOnAfterTroubleAndAfterNothing() throws InterruptedException {
        AtomicInteger parts = new AtomicInteger();
        CountDownLatch sixth = new CountDownLatch(6);
        BackgroundWork work = new BackgroundWork("testing", () -> {
            sixth.countDown();
            if (parts.incrementAndGet() == 2) {
                throw new IllegalStateException("a trouble of this test's own");
            }
            return parts.get() < 4;
        }, QUICK);
        assertEquals(0, parts.get(), "nothing before it is started");
        work.start();
        assertTrue(sixth.await(PATIENCE, TimeUnit.SECONDS));
        work.close();
        assertFalse(work.hasFailed(), "the trouble is over");
        int done = parts.get();
        Thread.sleep(20);
        assertEquals(done, parts.get(), "it has stopped");
    }

    @Test
    void saysThatItFailsAndStopsInTheMiddleOfItsPause() throws InterruptedException {
        CountDownLatch tried = new CountDownLatch(1);
        try (BackgroundWork work = new BackgroundWork("testing", () -> {
            tried.countDown();
            throw new IllegalStateException("a trouble of this test's own");
        }, new BackgroundWork.Pace(worked -> worked, Duration.ofHours(1), Duration.ofHours(1))).start()) {
            assertTrue(tried.await(PATIENCE, TimeUnit.SECONDS));
            for (int waited = 0; !work.hasFailed() && waited < PATIENCE * 100; waited++) {
                Thread.sleep(10);
            }
            assertTrue(work.hasFailed());
        }
    }
}
