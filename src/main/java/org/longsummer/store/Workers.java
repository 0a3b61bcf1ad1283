package org.longsummer.store;

import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** As many threads as there are processors, for work on a whole fleet; gone when it is done. */
final class Workers implements AutoCloseable {
    private final int count = Runtime.getRuntime().availableProcessors();
    private final ExecutorService threads = Executors.newFixedThreadPool(count, task -> {
        Thread worker = new Thread(task, "judging");
        worker.setDaemon(true);
        return worker;
    });

    int count() {
        return count;
    }

    <T> Future<T> begin(Callable<T> work) {
        return threads.submit(work);
    }

    /** What a piece of work came to; its failure is thrown here. */
    static <T> T result(Future<T> work) {
        try {
            return work.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted while judging");
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException failure ? failure : new IllegalStateException(e.getCause());
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
