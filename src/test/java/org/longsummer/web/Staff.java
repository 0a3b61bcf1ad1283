package org.longsummer.web;

import java.util.List;
import java.util.Optional;
import org.longsummer.access.Passwords;
import org.longsummer.access.Person;
import org.longsummer.access.Reach;
import org.longsummer.access.Role;
import org.longsummer.store.Session;
import org.longsummer.store.Store;

/** Invented people with accounts, two depots, and how they come in. */
final class Staff {
    static final String OURS = "Ferrow Flats";
    static final String THEIRS = "Quarry Bend";
    static final String ADMINISTRATOR = "Ada Merrow";
    static final String PASSWORD = "pebble lantern oatmeal drift";
    private static final String HASH = new Passwords().hash(PASSWORD);

    private final RunningServer server;
    private final Store store;

    /** Gives the server an administrator, a manager and two technicians of one depot, and a manager of the other. */
    Staff(RunningServer server) {
        this.server = server;
        this.store = server.store;
        add(ADMINISTRATOR, Role.ADMINISTRATOR, Reach.EVERYWHERE);
        add("Moss Tarrin", Role.MANAGER, Reach.of(List.of(OURS)));
        add("Ines Calder", Role.TECHNICIAN, Reach.of(List.of(OURS)));
        add("Otto Brandt", Role.TECHNICIAN, Reach.of(List.of(OURS)));
        add("Quill Danner", Role.MANAGER, Reach.of(List.of(THEIRS)));
    }

    Person add(String name, Role role, Reach reach) {
        Person person = store.people().add(name, role, reach).orElseThrow();
        store.people().setPassword(person.id(), HASH, Optional.empty());
        return store.people().find(person.id()).orElseThrow();
    }

    Person person(String name) {
        return store.people().named(name).orElseThrow();
    }

    /** Somebody signed in at a browser, without the cost of a password. */
    Caller at(String name) {
        return with(name, Session.Kind.BROWSER);
    }

    Caller onPhone(String name) {
        return with(name, Session.Kind.PHONE);
    }

    private Caller with(String name, Session.Kind kind) {
        return new Caller(server).withCookie("longsummer", session(name, kind));
    }

    /** What a signed-in person's cookie holds. */
    String session(String name, Session.Kind kind) {
        return store.sessions().begin(person(name), kind, "a test").text();
    }

    Caller nobody() {
        return new Caller(server);
    }
}
