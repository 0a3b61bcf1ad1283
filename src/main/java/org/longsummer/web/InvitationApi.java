package org.longsummer.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.longsummer.access.PasswordRules;
import org.longsummer.access.Passwords;
import org.longsummer.access.Person;
import org.longsummer.access.Secret;
import org.longsummer.store.Actor;
import org.longsummer.store.Store;
import org.longsummer.wire.Problem;

/** Choosing a password by a link that an administrator made; the link opens this once and nothing else. */
final class InvitationApi {
    private final Store store;
    private final Passwords passwords;

    InvitationApi(Store store, Passwords passwords) {
        this.store = store;
        this.passwords = passwords;
    }

    /** The link's secret, and the password that was chosen; absent while the page only asks whose link it is. */
    record Form(String key, String password) {}

    /**
     * Whom the link invites.
     *
     * @param done the password was kept
     */
    record Invited(String name, boolean done) {}

    void take(Context request) {
        Form form = Reader.body(request, Form.class);
        Secret secret = new Secret(Optional.ofNullable(form.key()).orElse("").strip());
        Person person = store.people().invited(secret).orElseThrow(InvitationApi::over);
        if (form.password() == null) {
            request.json(new Invited(person.name(), false));
            return;
        }
        refuseIfPoor("password", form.password(), person, store);
        store.acting().begin(new Actor(person.name(), Optional.of(person.id()), "link"));
        store.people().acceptInvitation(secret, passwords.hash(form.password())).orElseThrow(InvitationApi::over);
        request.json(new Invited(person.name(), true));
    }

    /** Sees that a password is long and not among those that are tried first. */
    static void refuseIfPoor(String box, String password, Person person, Store store) {
        List<String> words = new java.util.ArrayList<>(List.of(person.name()));
        store.depots().all().forEach(depot -> words.add(depot.name()));
        PasswordRules.objection(password, words).ifPresent(objection -> {
            throw new Refused(422, List.of(new Problem(box, "", objection.limit(), objection.remedy())));
        });
    }

    private static Refused over() {
        return new Refused(404, List.of(new Problem("key", "", "This link was used, or it is over.", "Ask an administrator for a new one.")));
    }
}
