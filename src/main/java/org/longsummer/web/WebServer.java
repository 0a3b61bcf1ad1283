package org.longsummer.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.staticfiles.Location;
import io.javalin.json.JavalinJackson;
import java.time.Clock;
import java.util.List;
import java.util.function.Predicate;
import org.longsummer.store.Store;
import org.longsummer.wire.Problem;

/** Serves the pages and their data over HTTP. */
public final class WebServer implements AutoCloseable {
    /** Nothing from other hosts, nothing inline; charts set sizes through the object model, which this allows. */
    private static final String CONTENT_POLICY = "default-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; "
            + "form-action 'self'; frame-ancestors 'none'";
    private static final JsonInclude.Value WRITTEN = JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.ALWAYS);
    private static final long LARGEST_FORM = 1_000_000;
    private static final long LARGEST_FILE_GIGABYTES = 1;

    private final Javalin javalin;

    /**
     * @param store the fleet's record; stays open when this is closed
     * @param clock tells which visits lie in the future and which season it is
     * @param demoFleet fills an empty record with the invented demo fleet; answers false, and changes nothing, when anything is stored
     */
    public WebServer(Store store, Clock clock, Predicate<Store> demoFleet) {
        javalin = Javalin.create(config -> {
            settle(config);
            Failures.lay(config.routes);
            config.routes.before(WebServer::guard);
            Routes.lay(config.routes, new HouseApi(store, demoFleet), new YardApi(store, clock), new UnitApi(store),
                    new VisitApi(store, clock), new ImportApi(store), new OfflineApi(store, clock),
                    AppShell.ofPages());
        });
    }

    /**
     * Starts to listen.
     *
     * @param host name or address of the interface
     * @param port 0 for any free one
     */
    public WebServer start(String host, int port) {
        javalin.start(host, port);
        return this;
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }

    private static void settle(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.http.maxRequestSize = LARGEST_FORM;
        config.http.generateEtags = true;
        config.jetty.multipartConfig.maxFileSize(LARGEST_FILE_GIGABYTES, SizeUnit.GB);
        config.jetty.multipartConfig.maxTotalRequestSize(2 * LARGEST_FILE_GIGABYTES, SizeUnit.GB);
        config.jetty.multipartConfig.maxInMemoryFileSize(1, SizeUnit.MB);
        config.jsonMapper(new JavalinJackson(JsonMapper.builder().addModule(new Jdk8Module())
                .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE).defaultPropertyInclusion(WRITTEN)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build(), false));
        config.staticFiles.add("/web", Location.CLASSPATH);
        config.staticFiles.enableWebjars();
    }

    /** Says what a browser may do with what it gets, and lets no other site's page write here. */
    private static void guard(Context request) {
        request.header("Content-Security-Policy", CONTENT_POLICY);
        request.header("X-Content-Type-Options", "nosniff");
        request.header("Referrer-Policy", "same-origin");
        String origin = request.header("Origin");
        boolean writes = !List.of("GET", "HEAD").contains(request.method().name());
        if (writes && origin != null && !origin.replaceFirst("^https?://", "").equals(request.host())) {
            throw new Refused(403, List.of(new Problem("", origin, "Only Longsummer's own pages may write here.",
                    "Open the page from this address and send it again.")));
        }
    }
}
