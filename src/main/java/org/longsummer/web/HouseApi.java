package org.longsummer.web;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Predicate;
import org.longsummer.store.Rejudging;
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
     * @param judgingAgain how far the fleet is judged again; absent when nothing is to be
     * @param who the reader
     * @param business whose paper it is
     */
    record House(boolean demo, int units, Optional<Rejudging.Progress> judgingAgain, SignInApi.Who who, BusinessApi.BusinessView business) {}

    void show(Context request) {
        Asking asking = Asking.of(request);
        request.json(new House(store.demo().isThere(), store.units().count(asking.reach()),
                asking.reach().everywhere() ? store.rejudging().progress() : Optional.empty(), SignInApi.Who.of(asking),
                BusinessApi.BusinessView.of(store.business().read())));
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
