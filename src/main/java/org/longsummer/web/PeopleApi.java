package org.longsummer.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.access.Person;
import org.longsummer.access.Reach;
import org.longsummer.access.Role;
import org.longsummer.store.Depot;
import org.longsummer.store.People;
import org.longsummer.store.Store;
import org.longsummer.wire.Boxes;

/** The people, for those who administer: who there is, what each may do and see, and what of his is open where. */
final class PeopleApi {
    private final Store store;
    private final Front front;

    PeopleApi(Store store, Front front) {
        this.store = store;
        this.front = front;
    }

    /** A person; {@code depots} is absent when he sees all. */
    record PersonView(String id, String name, String role, Optional<List<String>> depots, boolean active, boolean hasPassword, int sessions,
            int phones, int programs) {}

    /**
     * All people.
     *
     * @param defined somebody can sign in and administer, so that nobody gets in without signing in
     * @param depots names of all depots, to choose from
     */
    record PeoplePage(boolean defined, List<PersonView> people, List<String> depots) {}

    /** Somebody as typed; {@code depots} absent for all. */
    record Form(String name, String role, List<String> depots) {}

    /**
     * A link by which somebody chooses a password; it is told this once.
     *
     * @param address to be handed to the person
     * @param hours how long it lives
     */
    record Invitation(String personId, String name, String address, long hours) {}

    void show(Context request) {
        request.json(new PeoplePage(store.people().areDefined(), store.people().all().stream().map(this::view).toList(),
                store.depots().all().stream().map(Depot::name).toList()));
    }

    void add(Context request) {
        Form form = Reader.body(request, Form.class);
        Boxes boxes = boxes(form);
        String name = boxes.text("name", Person.LONGEST_NAME);
        if (name.isEmpty() || name.chars().anyMatch(Character::isISOControl)) {
            boxes.refuse("name", "A person needs a name.", "Type it as it should stand in the record; it cannot be changed later.");
        }
        Role role = role(boxes);
        Refused.ifAny(boxes.problems());
        refuseUnlessFirstAdministers(role);
        Person person = store.people().add(name, role, reach(form)).orElseThrow(() -> Refused.conflict("name", name,
                "Somebody has this name already, maybe with a closed account.", "Add what tells the two apart, such as a place."));
        invite(request.status(201), person);
    }

    void change(Context request) {
        Form form = Reader.body(request, Form.class);
        Boxes boxes = boxes(form);
        Role role = role(boxes);
        Refused.ifAny(boxes.problems());
        answer(request, store.people().change(request.pathParam("person"), role, reach(form)));
    }

    void close(Context request) {
        answer(request, store.people().close(request.pathParam("person")));
    }

    void reopen(Context request) {
        answer(request, store.people().reopen(request.pathParam("person")));
    }

    void endSessions(Context request) {
        Person person = find(request);
        store.sessions().endAll(person.id());
        show(request);
    }

    void invite(Context request) {
        invite(request, find(request));
    }

    private void invite(Context request, Person person) {
        if (!person.active()) {
            throw Refused.conflict("person", person.name(), "This account is closed.", "Open it again first.");
        }
        String key = store.people().invite(person.id()).text();
        request.json(new Invitation(person.id(), person.name(),
                front.scheme(request) + "://" + front.host(request) + front.basePath() + "/welcome/#" + key, People.INVITATION_LIVES.toHours()));
    }

    private void answer(Context request, People.Outcome outcome) {
        switch (outcome) {
            case DONE -> show(request);
            case UNKNOWN -> throw unknown(request);
            case LAST_ADMINISTRATOR -> throw Refused.conflict("person", "", "Nobody else can administer.",
                    "Make somebody else an administrator first, and let him choose a password.");
        }
    }

    /** Before anybody can administer, the server stands open; the first account must be one that can. */
    private void refuseUnlessFirstAdministers(Role role) {
        if (role != Role.ADMINISTRATOR && !store.people().areDefined()) {
            throw Refused.conflict("role", role.word(), "Nobody administers yet.", "Make the first one an administrator and let him choose a password.");
        }
    }

    private static Boxes boxes(Form form) {
        return new Boxes(Map.of("name", Optional.ofNullable(form.name()).orElse(""), "role", Optional.ofNullable(form.role()).orElse("")));
    }

    private static Role role(Boxes boxes) {
        Role role = boxes.choice("role", Role.class, null);
        if (boxes.text("role").isEmpty()) {
            boxes.refuse("role", "A person needs a role.", "Choose technician, manager or administrator.");
        }
        return role;
    }

    private static Reach reach(Form form) {
        if (form.depots() == null) {
            return Reach.EVERYWHERE;
        }
        return Reach.of(form.depots().stream().map(String::strip).filter(depot -> !depot.isEmpty() && !depot.contains("\n")).toList());
    }

    private Person find(Context request) {
        return store.people().find(request.pathParam("person")).orElseThrow(() -> unknown(request));
    }

    private static Refused unknown(Context request) {
        return Refused.unknown("person", request.pathParam("person"), "There is no person of this id.");
    }

    private PersonView view(Person person) {
        long phones = store.sessions().ofPerson(person.id()).stream().filter(session -> session.kind() == org.longsummer.store.Session.Kind.PHONE)
                .count();
        int sessions = store.sessions().ofPerson(person.id()).size();
        return new PersonView(person.id(), person.name(), person.role().word(),
                person.reach().everywhere() ? Optional.empty() : Optional.of(List.copyOf(person.reach().depots())), person.active(),
                person.hasPassword(), sessions - (int) phones, (int) phones, store.programs().ofPerson(person.id()).size());
    }
}
