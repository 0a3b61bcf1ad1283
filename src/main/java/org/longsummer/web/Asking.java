package org.longsummer.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.longsummer.access.Person;
import org.longsummer.access.Reach;
import org.longsummer.access.Right;
import org.longsummer.store.Actor;
import org.longsummer.store.YardFilter;
import org.longsummer.wire.Problem;

/**
 * Who asks: found out once, at the door, and handed to every handler. What a list shows is narrowed by {@link #yard()} and
 * {@link #reach()}; what an address names is looked at by the {@link Doorkeeper} before the handler is called.
 *
 * @param how how he is known
 * @param person the person, where there is one
 * @param most the most that he may do; absent for nobody and for an owner's link
 * @param reach the depots that he sees
 * @param name the person's name; on an open server the one he typed, maybe empty
 * @param keyId the session or program
 * @param sheetUnit the unit whose sheet an owner's link opens
 */
record Asking(How how, Optional<Person> person, Optional<Right> most, Reach reach, String name, Optional<String> keyId,
        Optional<String> sheetUnit) {
    private static final String ATTRIBUTE = Asking.class.getName();
    static final Reach NOWHERE = Reach.of(List.of());

    /** How somebody is known. */
    enum How {
        /** Nobody has an account yet, and only this machine can ask. */
        OPEN("typed"),
        BROWSER("signed in"), PHONE("phone"), PROGRAM("program"), SHEET("owner's link"), NOBODY("not signed in");

        private final String way;

        How(String way) {
            this.way = way;
        }
    }

    static Asking nobody() {
        return new Asking(How.NOBODY, Optional.empty(), Optional.empty(), NOWHERE, "", Optional.empty(), Optional.empty());
    }

    /** Somebody on an open server; he may do everything. */
    static Asking open(String typedName) {
        return new Asking(How.OPEN, Optional.empty(), Optional.of(Right.ADMINISTER), Reach.EVERYWHERE, typedName, Optional.empty(),
                Optional.empty());
    }

    /** A person at his own desk, just signed in. */
    static Asking signedIn(Person person) {
        return new Asking(How.BROWSER, Optional.of(person), Optional.of(person.role().right()), person.reach(), person.name(),
                Optional.empty(), Optional.empty());
    }

    static Asking sheet(String unitId) {
        return new Asking(How.SHEET, Optional.empty(), Optional.empty(), NOWHERE, "", Optional.empty(), Optional.of(unitId));
    }

    static Asking of(Context request) {
        Asking asking = request.attribute(ATTRIBUTE);
        return asking == null ? nobody() : asking;
    }

    void keptWith(Context request) {
        request.attribute(ATTRIBUTE, this);
    }

    boolean may(Right right) {
        return most.filter(allowed -> allowed.includes(right)).isPresent();
    }

    /** He may come to an address that needs this. */
    boolean may(Needs needs) {
        return switch (needs) {
            case NOTHING -> true;
            case SIGNED_IN -> how == How.BROWSER || how == How.PHONE;
            case SHEET -> how == How.SHEET || may(Right.SEE);
            case ADMINISTER -> (how == How.BROWSER || how == How.OPEN) && may(Right.ADMINISTER);
            case SEE, VISIT, LOOK_AFTER -> may(needs.right().orElseThrow());
        };
    }

    /** Where every list of units begins. */
    YardFilter yard() {
        return YardFilter.ALL.within(reach);
    }

    boolean sees(String depot) {
        return reach.includes(depot);
    }

    /**
     * Sees that a unit is put only where he sees it afterwards.
     *
     * @throws Refused when the depot is beyond his reach
     */
    void refuseBeyond(String box, String depot) {
        if (!sees(depot)) {
            throw new Refused(422, List.of(new Problem(box, depot, "You see the depots " + String.join(", ", reach.depots()) + ".",
                    "Choose one of them, or ask an administrator.")));
        }
    }

    /** Whether he may correct or withdraw what somebody of this name saved. */
    boolean mayChangeWhatWasSavedBy(String savedBy) {
        return may(Right.LOOK_AFTER) || person.isPresent() && person.get().name().equals(savedBy);
    }

    /** As the journal will say. */
    Actor actor() {
        return new Actor(name.isEmpty() ? "somebody" : name, person.map(Person::id), how.way);
    }
}
