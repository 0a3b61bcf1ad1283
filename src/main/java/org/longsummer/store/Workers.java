package org.longsummer.store;

import java.util.ArrayDeque;
import java.util.Iterator;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Threads for work on a whole fleet; gone when it is done. */
public final class Workers implements AutoCloseable {
    /** Pieces under way for each thread, so that none waits for the next. */
    private static final int AHEAD = 4;

    private final int count;
    private final ExecutorService threads;

    /** As many as there are processors. */
    Workers() {
        this(Runtime.getRuntime().availableProcessors());
    }

    public Workers(int count) {
        this.count = count;
        this.threads = Executors.newFixedThreadPool(count, task -> {
            Thread worker = new Thread(task, "judging");
            worker.setDaemon(true);
            return worker;
        });
    }

    public int count() {
        return count;
    }

    public <T> Future<T> begin(Callable<T> work) {
        return threads.submit(work);
    }

    /**
     * Has pieces of work done side by side and takes what they came to in their order; few are under way at any moment.
     *
     * @param pieces made as they are needed, on this thread
     */
    public <T, X extends Exception> void inOrder(Iterator<? extends Callable<T>> pieces, Taker<T, X> taker) throws X {
        Line<T, X> line = line(taker);
        while (pieces.hasNext()) {
            line.add(pieces.next());
        }
        line.takeAll();
    }

    /** The same for pieces that come one by one. */
    public <T, X extends Exception> Line<T, X> line(Taker<T, X> taker) {
        return new Line<>(taker);
    }

    /** Pieces that are under way, few at any moment, and whoever takes what they came to in their order; for one thread. */
    public final class Line<T, X extends Exception> {
        private final ArrayDeque<Future<T>> underway = new ArrayDeque<>();
        private final Taker<T, X> taker;

        private Line(Taker<T, X> taker) {
            this.taker = taker;
        }

        public void add(Callable<T> piece) throws X {
            if (underway.size() == AHEAD * count) {
                taker.take(result(underway.remove()));
            }
            underway.add(begin(piece));
        }

        /** Takes what all pieces so far came to. */
        public void takeAll() throws X {
            while (!underway.isEmpty()) {
                taker.take(result(underway.remove()));
            }
        }
    }

    /** Takes what one piece of work came to. */
    @FunctionalInterface
    public interface Taker<T, X extends Exception> {
        void take(T result) throws X;
    }

    /** What a piece of work came to; what went wrong there goes wrong here. */
    public static <T> T result(Future<T> work) {
        try {
            return work.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted while judging");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            if (e.getCause() instanceof Error failure) {
                throw failure;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
