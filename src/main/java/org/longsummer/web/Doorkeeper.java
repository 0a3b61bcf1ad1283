package org.longsummer.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.router.Endpoint;
import io.javalin.router.InternalRouter;
import io.javalin.security.Roles;
import io.javalin.security.RouteRole;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.longsummer.access.Person;
import org.longsummer.access.Secret;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.PlannedWork;
import org.longsummer.store.Programs;
import org.longsummer.store.Sessions;
import org.longsummer.store.Store;
import org.longsummer.wire.Problem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Stands before every address: finds out who asks, looks whether he may come there, and whether what the address names lies within
 * the depots that he sees. What lies beyond is answered as what is not there.
 */
final class Doorkeeper {
    /** On an open server, the name that somebody typed on this device. */
    private static final String TYPED_NAME = "Longsummer-Name";
    private static final String BEARER = "Bearer ";
    private static final String OWNERS_LINK = "Sheet ";
    private static final Pattern PART = Pattern.compile("[{<]([^}>]+)[}>]");
    private static final Logger LOG = LoggerFactory.getLogger(Doorkeeper.class);

    private final Store store;
    private final Front front;
    private final Cookies cookies;
    /** By the name of a part of an address: which unit it names. A name that is not here belongs to nobody's depot. */
    private final Map<String, Function<String, Optional<String>>> unitNamedBy;
    /**
     * Parts of addresses that name nothing of the fleet, only what lies below a unit that the same address names, or, as a round does,
     * units of several depots of which its handler shows those that are seen.
     */
    private static final Set<String> UNIT_BESIDE = Set.of("person", "session", "program", "link", "round", "handover");

    Doorkeeper(Store store, Front front, Cookies cookies) {
        this.store = store;
        this.front = front;
        this.cookies = cookies;
        this.unitNamedBy = Map.of("unit", Optional::of,
                "visit", this::unitOfVisit, "plan", plan -> store.plans().find(plan).map(PlannedWork::unitId), "photo", photo -> store.photos().find(photo).flatMap(found -> unitOfVisit(found.visitId())));
    }

    private Optional<String> unitOfVisit(String visit) {
        return store.visits().find(visit).map(found -> found.visit().unitId());
    }

    void stand(RoutesConfig routes) {
        routes.beforeMatched(this::letIn);
        routes.after(request -> store.acting().end());
    }

    private void letIn(Context request) {
        Set<RouteRole> needs = request.routeRoles();
        if (needs.isEmpty() && isApi(request)) {
            throw new Refused(405, List.of(new Problem("", request.method().name(), "This cannot be done here.", "See the list of addresses.")));
        }
        if (needs.isEmpty()) {
            return;
        }
        Asking asking = who(request);
        asking.keptWith(request);
        store.acting().begin(asking.actor());
        for (RouteRole need : needs) {
            refuseUnless(asking, (Needs) need, request);
        }
        if (!needs.contains(Needs.NOTHING)) {
            request.pathParamMap().forEach((part, text) -> refuseBeyond(asking, part, text));
        }
    }

    static boolean isApi(Context request) {
        return request.path().substring(request.contextPath().length()).startsWith("/api/");
    }

    private void refuseUnless(Asking asking, Needs need, Context request) {
        if (asking.may(need)) {
            return;
        }
        if (asking.how() == Asking.How.NOBODY) {
            cookies.forget(request);
            request.header("WWW-Authenticate", "Bearer realm=\"Longsummer\"");
            throw new Refused(401, List.of(new Problem("", "", "You are not signed in.", "Sign in and try again.")));
        }
        LOG.atWarn().addKeyValue("method", request.method().name()).addKeyValue("route", RequestLog.route(request)).log("refused");
        throw new Refused(403, List.of(new Problem("", "", "You may not do this here.", "Ask somebody who may: a manager or an administrator.")));
    }

    private void refuseBeyond(Asking asking, String part, String text) {
        if (asking.reach().everywhere() || UNIT_BESIDE.contains(part)) {
            return;
        }
        Optional<String> unit = unitNamedBy.get(part).apply(text);
        boolean beyond = unit.flatMap(store.units()::find).map(FleetUnit::unit).filter(found -> !asking.sees(found.site())).isPresent();
        if (beyond) {
            throw part.equals("unit") ? UnitApi.unknown(text) : part.equals("plan") ? PlanApi.unknown(text) : VisitApi.unknown(text);
        }
    }

    /**
     * Sees before the first request that every address says what it needs and names nothing whose depot cannot be found.
     *
     * @throws IllegalStateException naming the addresses that do not
     */
    void inspect(InternalRouter router) {
        List<String> unguarded = router.allHttpHandlers().stream().map(laid -> laid.endpoint).filter(endpoint -> endpoint.method.isHttpMethod())
                .filter(endpoint -> !isGuarded(endpoint)).map(endpoint -> endpoint.method.name() + " " + endpoint.path).toList();
        if (!unguarded.isEmpty()) {
            throw new IllegalStateException("these addresses do not say what they need, or name what no depot is known of: " + unguarded);
        }
    }

    private boolean isGuarded(Endpoint endpoint) {
        Roles roles = endpoint.metadata(Roles.class);
        boolean says = roles != null && roles.getRoles().stream().anyMatch(Needs.class::isInstance);
        return says && PART.matcher(endpoint.path).results().map(part -> part.group(1))
                .allMatch(part -> unitNamedBy.containsKey(part) || UNIT_BESIDE.contains(part));
    }

    /** Who asks, whatever he may do. */
    Asking who(Context request) {
        String authorization = Optional.ofNullable(request.header("Authorization")).orElse("");
        Optional<Asking> known = authorization.startsWith(BEARER) ? program(authorization.substring(BEARER.length()))
                : authorization.startsWith(OWNERS_LINK) ? owner(authorization.substring(OWNERS_LINK.length()))
                : cookies.read(request).flatMap(this::session);
        return known.orElseGet(() -> isOpenTo(request) ? Asking.open(typedName(request)) : Asking.nobody());
    }

    /** Nobody has an account, and who asks sits at this machine. */
    boolean isOpenTo(Context request) {
        return !front.exposed() && front.isAtThisMachine(request) && !store.people().areDefined();
    }

    private Optional<Asking> session(Secret secret) {
        return store.sessions().open(secret).map(Doorkeeper::session);
    }

    private static Asking session(Sessions.Opened opened) {
        Person person = opened.person();
        Asking.How how = switch (opened.session().kind()) {
            case BROWSER -> Asking.How.BROWSER;
            case PHONE -> Asking.How.PHONE;
        };
        return new Asking(how, Optional.of(person), Optional.of(person.role().right()), person.reach(), person.name(),
                Optional.of(opened.session().id()), Optional.empty());
    }

    private Optional<Asking> program(String secret) {
        return store.programs().open(new Secret(secret.strip())).map(Doorkeeper::program);
    }

    private static Asking program(Programs.Opened opened) {
        Person person = opened.person();
        return new Asking(Asking.How.PROGRAM, Optional.of(person), Optional.of(opened.program().most().atMost(person.role().right())),
                person.reach().within(opened.program().reach()), person.name(), Optional.of(opened.program().id()), Optional.empty());
    }

    private Optional<Asking> owner(String secret) {
        return store.sheetLinks().unitOf(new Secret(secret.strip())).map(Asking::sheet);
    }

    private static String typedName(Context request) {
        String typed = Optional.ofNullable(request.header(TYPED_NAME)).orElse("");
        try {
            String name = URLDecoder.decode(typed, StandardCharsets.UTF_8).replaceAll("\\p{Cntrl}", " ").strip();
            return name.substring(0, Math.min(name.length(), Person.LONGEST_NAME));
        } catch (IllegalArgumentException e) {
            return "";
        }
    }
}
