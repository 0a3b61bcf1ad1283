package org.longsummer.web;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.access.Attempts;
import org.longsummer.access.Passwords;
import org.longsummer.access.Person;
import org.longsummer.access.Reach;
import org.longsummer.access.Right;
import org.longsummer.access.Secret;
import org.longsummer.store.Program;
import org.longsummer.store.Session;
import org.longsummer.store.Store;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Problem;

/** A person's own account: password, sessions and phones, programs. */
final class AccountApi {
    private static final int LONGEST_NAME = 80;
    private static final int MOST_PROGRAMS = 20;
    private static final int MOST_DAYS = 400;

    private final Store store;
    private final Passwords passwords;
    private final Attempts attempts;
    private final Front front;
    private final Cookies cookies;

    AccountApi(Store store, Passwords passwords, Attempts attempts, Front front, Cookies cookies) {
        this.store = store;
        this.passwords = passwords;
        this.attempts = attempts;
        this.front = front;
        this.cookies = cookies;
    }

    /**
     * A session or a phone.
     *
     * @param here the one that asks
     */
    record SessionView(String id, String kind, String label, String began, String used, boolean here) {
        static SessionView of(Session session, Optional<String> hereId) {
            return new SessionView(session.id(), session.kind().word(), session.label(), session.began().toString(), session.used().toString(),
                    hereId.filter(session.id()::equals).isPresent());
        }
    }

    /** A program; {@code depots} is absent when it sees all that the person sees. */
    record ProgramView(String id, String name, String most, Optional<List<String>> depots, String made, String ends, Optional<String> used) {
        static ProgramView of(Program program) {
            return new ProgramView(program.id(), program.name(), program.most().word(),
                    program.reach().everywhere() ? Optional.empty() : Optional.of(List.copyOf(program.reach().depots())),
                    program.made().toString(), program.ends().toString(), program.used().map(Object::toString));
        }
    }

    record Account(SignInApi.Who who, List<SessionView> sessions, List<ProgramView> programs) {}

    record PasswordForm(String password, String newPassword) {}

    /**
     * A wish for a program's key.
     *
     * @param password the person's own, once more
     * @param most see, visit or look_after
     * @param depots the depots that it may see; absent for all that the person sees
     * @param days how long it lives
     */
    record ProgramForm(String password, String name, String most, List<String> depots, Integer days) {}

    /** A new program's key; it is told this once. */
    record Made(String key) {}

    void show(Context request) {
        Asking asking = Asking.of(request);
        String person = person(asking).id();
        request.json(new Account(SignInApi.Who.of(asking),
                store.sessions().ofPerson(person).stream().map(session -> SessionView.of(session, asking.keyId())).toList(),
                store.programs().ofPerson(person).stream().map(ProgramView::of).toList()));
    }

    void changePassword(Context request) {
        PasswordForm form = Reader.body(request, PasswordForm.class);
        Asking asking = Asking.of(request);
        Person person = person(asking);
        refuseUnlessProven(request, person, form.password());
        InvitationApi.refuseIfPoor("new_password", Optional.ofNullable(form.newPassword()).orElse(""), person, store);
        store.people().setPassword(person.id(), passwords.hash(form.newPassword()), asking.keyId());
        show(request);
    }

    void endSession(Context request) {
        Asking asking = Asking.of(request);
        if (!store.sessions().end(person(asking).id(), request.pathParam("session"))) {
            throw Refused.unknown("session", request.pathParam("session"), "There is no session or phone of yours of this name.");
        }
        show(request);
    }

    /** Signs out everywhere: this browser, all others, and all phones. */
    void endAllSessions(Context request) {
        store.sessions().endAll(person(Asking.of(request)).id());
        cookies.forget(request);
        request.json(SignInApi.Who.of(Asking.nobody()));
    }

    void makeProgram(Context request) {
        ProgramForm form = Reader.body(request, ProgramForm.class);
        Person person = person(Asking.of(request));
        refuseUnlessProven(request, person, form.password());
        Boxes boxes = new Boxes(Map.of("name", Optional.ofNullable(form.name()).orElse(""), "most", Optional.ofNullable(form.most()).orElse(""),
                "days", form.days() == null ? "" : form.days().toString()));
        String name = boxes.text("name", LONGEST_NAME);
        if (name.isEmpty()) {
            boxes.refuse("name", "A program needs a name.", "Say what it is for, so that you know later which one to withdraw.");
        }
        if (store.programs().ofPerson(person.id()).size() >= MOST_PROGRAMS) {
            boxes.refuse("name", "You have " + MOST_PROGRAMS + " programs.", "Withdraw one that is no longer used.");
        }
        Right most = boxes.choice("most", Right.class, Right.SEE);
        double days = boxes.number("days", 1, MOST_DAYS, "days").orElse((double) MOST_DAYS);
        Refused.ifAny(boxes.problems());
        Reach reach = form.depots() == null ? Reach.EVERYWHERE : Reach.of(form.depots());
        Secret key = store.programs().make(person.id(), name, most, reach, Duration.ofDays((long) days));
        request.status(201).json(new Made(key.text()));
    }

    void withdrawProgram(Context request) {
        if (!store.programs().withdraw(person(Asking.of(request)).id(), request.pathParam("program"))) {
            throw Refused.unknown("program", request.pathParam("program"), "There is no program of yours of this name.");
        }
        show(request);
    }

    private static Person person(Asking asking) {
        return asking.person().orElseThrow();
    }

    /** The password once more, with the same brake as at the door, before what would outlast the session. */
    private void refuseUnlessProven(Context request, Person person, String password) {
        String address = front.address(request);
        attempts.take(person.name(), address).ifPresent(wait -> {
            throw SignInApi.tooOften(wait, request, person.name());
        });
        if (!passwords.matches(Optional.ofNullable(password).orElse(""), store.people().passwordHash(person.id()))) {
            throw new Refused(422, List.of(new Problem("password", "", "This is not your password.", "Type the one you sign in with.")));
        }
        attempts.succeeded(person.name(), address);
    }
}
