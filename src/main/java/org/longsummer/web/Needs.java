package org.longsummer.web;

import io.javalin.security.RouteRole;
import java.util.Optional;
import org.longsummer.access.Right;

/** What an address asks of whoever comes to it; every address says one of these where it is laid, or the server does not start. */
enum Needs implements RouteRole {
    /** Anybody may. Nothing of the fleet is told here. */
    NOTHING(null),
    /** A person himself, signed in here; no program in his name. */
    SIGNED_IN(null),
    /** An owner's link, or whoever may see the unit. */
    SHEET(Right.SEE),
    SEE(Right.SEE),
    VISIT(Right.VISIT),
    LOOK_AFTER(Right.LOOK_AFTER),
    /** A person himself, in a browser: a phone that was lost opens no door to the people. */
    ADMINISTER(Right.ADMINISTER);

    private final Right right;

    Needs(Right right) {
        this.right = right;
    }

    Optional<Right> right() {
        return Optional.ofNullable(right);
    }
}
