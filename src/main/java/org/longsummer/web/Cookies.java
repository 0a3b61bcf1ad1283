package org.longsummer.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import org.longsummer.access.Secret;
import org.longsummer.store.Session;

/**
 * The one cookie there is: the key of a session. Never seen by scripts, never sent along from another site, and over HTTPS only where
 * it was set over HTTPS; its name then tells the browser to take it from this host alone.
 */
final class Cookies {
    private static final int ENDS_WITH_BROWSER = -1;

    private final Front front;

    Cookies(Front front) {
        this.front = front;
    }

    Optional<Secret> read(Context request) {
        return Optional.ofNullable(request.cookie(name(request))).filter(text -> !text.isBlank()).map(Secret::new);
    }

    void give(Context request, Secret secret, Session.Kind kind) {
        set(request, secret.text(), kind == Session.Kind.PHONE ? (int) kind.absolute().toSeconds() : ENDS_WITH_BROWSER);
    }

    void forget(Context request) {
        if (request.cookie(name(request)) != null) {
            set(request, "", 0);
        }
    }

    private void set(Context request, String value, int seconds) {
        request.cookie(new Cookie(name(request), value, "/", seconds, front.isSecure(request), true, null, SameSite.STRICT));
    }

    /** Two installations on one host, each under its own path, keep apart by their cookies' names. */
    private String name(Context request) {
        return (front.isSecure(request) ? "__Host-" : "") + "longsummer" + front.basePath().replace('/', '-').replace('~', '_');
    }
}
