package org.longsummer.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.SheetLink;
import org.longsummer.store.Store;

/** The links by which owners see one sheet: made, listed, withdrawn. */
final class SheetLinkApi {
    private final Store store;
    private final Front front;

    SheetLinkApi(Store store, Front front) {
        this.store = store;
        this.front = front;
    }

    /** A link, without what opens it. */
    record LinkView(String id, String madeBy, String made, String ends, Optional<String> withdrawn, boolean alive) {}

    record Links(List<LinkView> links) {}

    /** A new link; its address is told this once. The key stands behind the #, which no browser sends to a server or passes on. */
    record Made(String address) {}

    void show(Context request) {
        request.json(new Links(store.sheetLinks().ofUnit(UnitApi.find(store, request.pathParam("unit")).id()).stream().map(this::view).toList()));
    }

    void make(Context request) {
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        String key = store.sheetLinks().make(unit.id(), Asking.of(request).actor().name()).text();
        request.status(201).json(new Made(front.scheme(request) + "://" + front.host(request) + front.basePath() + "/sheet/#" + key));
    }

    void withdraw(Context request) {
        if (!store.sheetLinks().withdraw(request.pathParam("unit"), request.pathParam("link"))) {
            throw Refused.unknown("link", request.pathParam("link"), "There is no link of this id that could be withdrawn.");
        }
        show(request);
    }

    private LinkView view(SheetLink link) {
        return new LinkView(link.id(), link.madeBy(), link.made().toString(), link.ends().toString(), link.withdrawn().map(Object::toString),
                link.isAlive(store.clock().instant()));
    }
}
