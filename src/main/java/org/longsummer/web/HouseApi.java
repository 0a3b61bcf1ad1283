package org.longsummer.web;

import io.javalin.http.Context;
import java.util.function.Predicate;
import org.longsummer.store.Store;

/** What every page needs to know about this installation; the demo fleet, in and out. */
final class HouseApi {
    private final Store store;
    private final Predicate<Store> demoFleet;

    HouseApi(Store store, Predicate<Store> demoFleet) {
        this.store = store;
        this.demoFleet = demoFleet;
    }

    /**
     * This installation.
     *
     * @param demo what is stored is the invented demo fleet
     * @param units how many units the reader sees
     * @param who the reader
     */
    record House(boolean demo, int units, SignInApi.Who who) {}

    void show(Context request) {
        Asking asking = Asking.of(request);
        request.json(new House(store.demo().isThere(), store.units().count(asking.reach()), SignInApi.Who.of(asking)));
    }

    void bringDemo(Context request) {
        if (!demoFleet.test(store)) {
            throw Refused.conflict("", "", "The demo fleet goes into an empty record only, so that nothing invented stands beside real readings.",
                    "Start Longsummer on another directory to see it.");
        }
        show(request);
    }

    void removeDemo(Context request) {
        if (!store.demo().remove()) {
            throw Refused.conflict("", "", "What is stored here is not the demo fleet.", "Nothing was removed.");
        }
        show(request);
    }
}
