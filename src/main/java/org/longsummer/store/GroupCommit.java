package org.longsummer.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * Small writes of many people, in as few transactions as may be: what comes while the disk is busy is written together next, and whoever brought
 * it waits until it is on disk. Where one of them fails, the transaction is undone and each is made again by itself, so that nobody fails with another.
 */
final class GroupCommit implements AutoCloseable {
    private static final int MOST_AT_ONCE = 50;
    private static final int SECONDS_TO_FINISH = 60;

    private final Jdbi writer;
    private final Acting acting;
    private final Queue<Write<?>> waiting = new ConcurrentLinkedQueue<>();
    private final ExecutorService writing = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "saving");
        thread.setDaemon(true);
        return thread;
    });

    GroupCommit(Jdbi writer, Acting acting) {
        this.writer = writer;
        this.acting = acting;
    }

    /** Something to write, as often as it takes, and who does it. */
    private record Write<T>(Function<Handle, T> work, Actor actor, CompletableFuture<T> done) {
        /** What to tell once it is on disk. */
        Runnable in(Handle handle) {
            T outcome = work.apply(handle);
            return () -> done.complete(outcome);
        }
    }

    /**
     * Writes; once this returns, what was written is on disk.
     *
     * @param work may be done more than once; only the last time counts
     */
    <T> T write(Function<Handle, T> work) {
        Write<T> mine = new Write<>(work, acting.now(), new CompletableFuture<>());
        waiting.add(mine);
        writing.execute(this::writeWaiting);
        try {
            return mine.done.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException failure ? failure : e;
        }
    }

    private void writeWaiting() {
        List<Write<?>> some = new ArrayList<>();
        for (Write<?> next = waiting.poll(); next != null; next = some.size() < MOST_AT_ONCE ? waiting.poll() : null) {
            some.add(next);
        }
        if (!some.isEmpty()) {
            write(some);
        }
    }

    private void write(List<Write<?>> some) {
        try {
            acting.begin(some.get(0).actor);
            writer.inTransaction(handle -> some.stream().map(each -> inTurn(each, handle)).toList()).forEach(Runnable::run);
        } catch (OneFailed e) {
            if (some.size() == 1) {
                some.get(0).done.completeExceptionally(e.getCause());
            } else {
                some.forEach(each -> write(List.of(each)));
            }
        } catch (RuntimeException | Error e) {
            some.forEach(each -> each.done.completeExceptionally(e));
        }
    }

    private Runnable inTurn(Write<?> each, Handle handle) {
        acting.begin(each.actor);
        acting.stamp(handle);
        try {
            return each.in(handle);
        } catch (RuntimeException | Error e) {
            throw new OneFailed(e);
        }
    }

    /** One of several writes failed, not the taking of the record or the bringing to disk, which fail for all of them. */
    private static final class OneFailed extends RuntimeException {
        private static final long serialVersionUID = 1;

        OneFailed(Throwable cause) {
            super(cause);
        }
    }

    /** Finishes what was begun. */
    @Override
    public void close() {
        writing.shutdown();
        try {
            writing.awaitTermination(SECONDS_TO_FINISH, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
