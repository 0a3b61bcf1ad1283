package org.longsummer.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.staticfiles.Location;
import io.javalin.json.JavalinJackson;
import io.javalin.security.Roles;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.function.Predicate;
import org.longsummer.access.Attempts;
import org.longsummer.access.Passwords;
import java.util.function.Supplier;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.longsummer.store.Store;
import org.longsummer.wire.Problem;

/** Serves the pages and their data over HTTP. */
public final class WebServer implements AutoCloseable {
    private static final JsonInclude.Value WRITTEN = JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.ALWAYS);
    private static final JsonMapper MAPPER = JsonMapper.builder().addModule(new Jdk8Module())
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE).defaultPropertyInclusion(WRITTEN)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build();
    /** So long may requests that have begun go on when the server is told to stop. */
    private static final Duration LONGEST_GOODBYE = Duration.ofSeconds(20);
    private static final long LARGEST_FORM = 1_000_000;
    private static final long LARGEST_FILE_GIGABYTES = 1;

    private final Javalin javalin;
    private final Front front;
    private final HandoverApi handovers;

    /**
     * For this machine alone.
     *
     * @param store the fleet's record; stays open when this is closed
     * @param clock tells which visits lie in the future and which season it is
     * @param demoFleet fills an empty record with the invented demo fleet; answers false, and changes nothing, when anything is stored
     */
    public WebServer(Store store, Clock clock, Predicate<Store> demoFleet) {
        this(store, clock, demoFleet, Front.LOCAL, List::of);
    }

    /** The same, standing otherwise towards the network. */
    public WebServer(Store store, Clock clock, Predicate<Store> demoFleet, Front front) {
        this(store, clock, demoFleet, front, List::of);
    }

    /** The same, beside something that may be in trouble of its own, which those who ask how it is are told as sentences. */
    public WebServer(Store store, Clock clock, Predicate<Store> demoFleet, Front front, Supplier<List<String>> troubles) {
        this.front = front;
        this.handovers = new HandoverApi(store);
        Cookies cookies = new Cookies(front);
        Doorkeeper door = new Doorkeeper(store, front, cookies);
        javalin = Javalin.create(config -> {
            settle(config);
            front.settle(config);
            Failures.lay(config.routes);
            new Headers(front).lay(config.routes);
            door.stand(config.routes);
            layAccess(config.routes, store, door, cookies, clock);
            Routes.lay(config.routes, new FleetApi(store), new PhotoApi(store), new DepotApi(store), new TechnicianApi(store),
                    new BusinessApi(store), new RecordApi(store), handovers);
            Routes.lay(config.routes, new RoundApi(store), new ChosenWorkApi(store), new SeasonApi(store));
            Routes.lay(config.routes, new WeighingApi(store), new PriceApi(store), new PlanApi(store), new SheetApi(store));
            config.routes.get("/api/openapi.json", new DescriptionApi(this::addresses, MAPPER)::show, Needs.NOTHING);
            Routes.lay(config.routes, new HealthApi(store, troubles), new HouseApi(store, demoFleet), new SignsApi(), new YardApi(store, clock),
                    new UnitApi(store), new VisitApi(store, clock), new ImportApi(store), new OfflineApi(store, clock), AppShell.ofPages());
        });
        door.inspect(javalin.unsafe.internalRouter);
    }

    private void layAccess(RoutesConfig routes, Store store, Doorkeeper door, Cookies cookies, Clock clock) {
        Passwords passwords = new Passwords();
        Attempts attempts = new Attempts(clock);
        Routes.lay(routes, new SignInApi(store, door, cookies, front, attempts, passwords), new InvitationApi(store, passwords),
                new AccountApi(store, passwords, attempts, front, cookies), new PeopleApi(store, front), new SheetLinkApi(store, front),
                new ChangesApi(store));
    }

    /**
     * Starts to listen.
     *
     * @param host name or address of the interface
     * @param port 0 for any free one
     */
    public WebServer start(String host, int port) {
        front.tls().ifPresent(tls -> javalin.unsafe.jetty.addConnector((server, plain) -> tls.connector(server, plain, host, port)));
        javalin.start(host, port);
        return this;
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    /** Every address that is served by code, and what it needs. */
    List<Address> addresses() {
        return javalin.unsafe.internalRouter.allHttpHandlers().stream().map(laid -> laid.endpoint).filter(endpoint -> endpoint.method.isHttpMethod())
                .map(endpoint -> new Address(endpoint.method.name(), endpoint.path,
                        (Needs) endpoint.metadata(Roles.class).getRoles().iterator().next())).toList();
    }

    /** An address with its method. */
    record Address(String method, String path, Needs needs) {}

    @Override
    public void close() {
        handovers.close();
        javalin.stop();
    }

    private static void settle(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.requestLogger.http(RequestLog::note);
        config.jetty.modifyServer(server -> {
            server.setHandler(new GracefulHandler());
            server.setStopTimeout(LONGEST_GOODBYE.toMillis());
        });
        config.http.maxRequestSize = LARGEST_FORM;
        config.http.generateEtags = true;
        config.jetty.multipartConfig.maxFileSize(LARGEST_FILE_GIGABYTES, SizeUnit.GB);
        config.jetty.multipartConfig.maxTotalRequestSize(2 * LARGEST_FILE_GIGABYTES, SizeUnit.GB);
        config.jetty.multipartConfig.maxInMemoryFileSize(1, SizeUnit.MB);
        config.jsonMapper(new JavalinJackson(MAPPER, false));
        config.staticFiles.add("/web", Location.CLASSPATH);
        config.staticFiles.enableWebjars();
    }
}
