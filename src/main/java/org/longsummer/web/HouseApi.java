package org.longsummer.web;

import io.javalin.http.Context;
import org.longsummer.store.Store;

/** What every page needs to know about this installation. */
final class HouseApi {
    private final Store store;
    private final boolean demo;

    HouseApi(Store store, boolean demo) {
        this.store = store;
        this.demo = demo;
    }

    /**
     * This installation.
     *
     * @param demo it shows the invented demo fleet
     * @param units how many units it knows
     */
    record House(boolean demo, int units) {}

    void show(Context request) {
        request.json(new House(demo, store.units().count()));
    }
}
