package org.longsummer.web;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.access.Attempts;
import org.longsummer.access.Passwords;
import org.longsummer.access.Person;
import org.longsummer.access.Right;
import org.longsummer.store.Actor;
import org.longsummer.store.Session;
import org.longsummer.store.Store;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Problem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Signing in, signing out, and who is signed in. */
final class SignInApi {
    private static final Logger LOG = LoggerFactory.getLogger(SignInApi.class);
    private static final int LONGEST_LABEL = 80;

    private final Store store;
    private final Doorkeeper door;
    private final Cookies cookies;
    private final Front front;
    private final Attempts attempts;
    private final Passwords passwords;

    SignInApi(Store store, Doorkeeper door, Cookies cookies, Front front, Attempts attempts, Passwords passwords) {
        this.store = store;
        this.door = door;
        this.cookies = cookies;
        this.front = front;
        this.attempts = attempts;
        this.passwords = passwords;
    }

    /**
     * Who asks.
     *
     * @param open nobody has an account; everything stands open on this machine
     * @param signedIn somebody is signed in
     * @param how {@code browser}, {@code phone}, {@code program}, {@code open} or {@code nobody}
     * @param name the person's name
     * @param role the person's role; absent when there is none
     * @param rights what may be done, each with those before it
     * @param depots the depots that are seen; absent for all
     */
    record Who(boolean open, boolean signedIn, String how, String name, Optional<String> role, List<String> rights,
            Optional<List<String>> depots) {
        static Who of(Asking asking) {
            return new Who(asking.how() == Asking.How.OPEN, asking.person().isPresent(), Boxes.word(asking.how()), asking.name(),
                    asking.person().map(person -> person.role().word()),
                    List.of(Right.values()).stream().filter(asking::may).map(Right::word).toList(),
                    asking.reach().everywhere() ? Optional.empty() : Optional.of(List.copyOf(asking.reach().depots())));
        }
    }

    /**
     * A wish to sign in.
     *
     * @param phone this is a phone that is to keep a key of its own
     * @param label what it is to be called in the list of phones and sessions
     */
    record Form(String name, String password, boolean phone, String label) {}

    void who(Context request) {
        request.json(Who.of(door.who(request)));
    }

    void signIn(Context request) {
        Form form = Reader.body(request, Form.class);
        String name = Optional.ofNullable(form.name()).orElse("");
        String password = Optional.ofNullable(form.password()).orElse("");
        refuseEmpty(name, password);
        String address = front.address(request);
        attempts.take(name, address).ifPresent(wait -> {
            throw tooOften(wait, request, name);
        });
        Optional<Person> person = proven(name, password);
        if (person.isEmpty()) {
            LOG.warn("sign-in refused: {} from {}", Logged.text(name), Logged.text(address));
            throw new Refused(401, List.of(new Problem("password", "", "Name and password do not belong together.",
                    "Check both; an administrator can make you a link to choose a new password.")));
        }
        attempts.succeeded(name, address);
        begin(request, person.get(), form);
        request.json(Who.of(Asking.signedIn(person.get())));
    }

    /** One path for every failure: an unknown name, a closed account and a wrong password cost the same work. */
    private Optional<Person> proven(String name, String password) {
        Optional<Person> person = store.people().named(name).filter(Person::active);
        Optional<String> kept = store.people().passwordHash(person.map(Person::id).orElse(""));
        if (!passwords.matches(password, kept)) {
            return Optional.empty();
        }
        if (kept.filter(passwords::isOutdated).isPresent()) {
            store.people().rehash(person.orElseThrow().id(), passwords.hash(password));
        }
        return person;
    }

    /** A new key, whatever was sent along; an earlier session of this browser is over. */
    private void begin(Context request, Person person, Form form) {
        Session.Kind kind = form.phone() ? Session.Kind.PHONE : Session.Kind.BROWSER;
        store.acting().begin(new Actor(person.name(), Optional.of(person.id()), "signed in"));
        cookies.read(request).flatMap(store.sessions()::open)
                .ifPresent(earlier -> store.sessions().end(earlier.person().id(), earlier.session().id()));
        cookies.give(request, store.sessions().begin(person, kind, label(request, form)), kind);
    }

    private static String label(Context request, Form form) {
        String given = Optional.ofNullable(form.label()).map(String::strip).filter(text -> !text.isEmpty())
                .orElseGet(() -> Optional.ofNullable(request.userAgent()).orElse("a browser"));
        String line = given.replaceAll("[\\p{Cntrl}]", " ");
        return line.substring(0, Math.min(line.length(), LONGEST_LABEL));
    }

    void signOut(Context request) {
        cookies.read(request).flatMap(store.sessions()::open).ifPresent(opened -> {
            store.acting().begin(new Actor(opened.person().name(), Optional.of(opened.person().id()), "signed in"));
            store.sessions().end(opened.person().id(), opened.session().id());
        });
        cookies.forget(request);
        request.header("Clear-Site-Data", "\"cache\"");
        request.json(Who.of(Asking.nobody()));
    }

    private static void refuseEmpty(String name, String password) {
        Boxes boxes = new Boxes(Map.of("name", name, "password", password));
        if (boxes.text("name", Person.LONGEST_NAME).isEmpty()) {
            boxes.refuse("name", "A name belongs here.", "Type the name by which you stand in the record.");
        }
        if (password.isEmpty()) {
            boxes.refuse("password", "A password belongs here.", "Type it; if you have none yet, an administrator can make you a link.");
        }
        Refused.ifAny(boxes.problems());
    }

    static Refused tooOften(Duration wait, Context request, String name) {
        long seconds = Math.max(1, wait.toSeconds());
        LOG.warn("sign-in refused for {} s: {} too often", seconds, Logged.text(name));
        request.header("Retry-After", Long.toString(seconds));
        return new Refused(429, List.of(new Problem("password", "", "That was tried too often.",
                "Wait " + (seconds < 90 ? seconds + " seconds" : (seconds + 59) / 60 + " minutes") + " and try again.")));
    }
}
