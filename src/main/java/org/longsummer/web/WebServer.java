package org.longsummer.web;

import io.javalin.Javalin;
import java.time.Clock;
import org.longsummer.store.Store;

/** Serves a fleet's record over HTTP. */
public final class WebServer implements AutoCloseable {
    private final Javalin javalin;

    public WebServer(Store store, Clock clock, boolean demo) {
        javalin = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.routes.get("/", request -> request.result(store.units().count() + " units"));
        });
    }

    public WebServer start(String host, int port) {
        javalin.start(host, port);
        return this;
    }

    public int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
