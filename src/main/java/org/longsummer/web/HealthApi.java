package org.longsummer.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.longsummer.store.Rejudging;
import org.longsummer.store.Store;
import org.longsummer.store.Trouble;

/** Tells a program that watches this one how it is. Says nothing of the fleet, so anybody may ask. */
final class HealthApi {
    private static final long LITTLE_ROOM = 100_000_000;

    private final Store store;
    private final Supplier<List<String>> more;

    /** @param more troubles of what runs beside the pages, as sentences */
    HealthApi(Store store, Supplier<List<String>> more) {
        this.store = store;
        this.more = more;
    }

    /**
     * How it is.
     *
     * @param status {@code ok}; {@code warning} when it works but somebody should look; {@code failing} when the record cannot be read
     * @param troubles what is wrong, as sentences
     * @param judgedAgainPercent how far the fleet is judged again, 0 to 99, after a change of the method or of a large depot; absent
     *     when there is nothing to do
     */
    record Health(String status, List<String> troubles, Optional<Integer> judgedAgainPercent) {}

    void show(Context request) {
        try {
            store.demo().isThere();
        } catch (RuntimeException e) {
            request.status(503).json(new Health("failing", List.of(Trouble.in(e).map(Trouble::limit).orElse("The record cannot be read.")),
                    Optional.empty()));
            return;
        }
        List<String> troubles = new ArrayList<>(more.get());
        if (store.freeBytes() < LITTLE_ROOM) {
            troubles.add("The disk of the data directory has less than 100 MB left.");
        }
        request.json(new Health(troubles.isEmpty() ? "ok" : "warning", troubles,
                store.rejudging().progress().map(Rejudging.Progress::percentDone)));
    }
}
