package org.longsummer.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longsummer.wire.Problem;

/** What a browser is told about every answer, and what it must tell about every request that changes something. */
final class Headers {
    /** Nothing from other hosts, nothing inline; charts set sizes through the object model, which this allows. */
    private static final String PAGE_POLICY = "default-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; "
            + "form-action 'self'; frame-ancestors 'none'";
    /** An answer that is no page may do nothing, should a browser ever show it as one. */
    private static final String JSON_POLICY = "default-src 'none'; frame-ancestors 'none'; sandbox";
    private static final String A_YEAR = "max-age=31536000";
    private static final Set<String> READING = Set.of("GET", "HEAD");

    private final Front front;

    Headers(Front front) {
        this.front = front;
    }

    void lay(RoutesConfig routes) {
        routes.before(this::before);
        routes.after(this::after);
    }

    private void before(Context request) {
        request.header("Content-Security-Policy", PAGE_POLICY);
        request.header("X-Content-Type-Options", "nosniff");
        request.header("Referrer-Policy", "same-origin");
        request.header("Cross-Origin-Opener-Policy", "same-origin");
        request.header("Cross-Origin-Resource-Policy", "same-origin");
        request.header("Permissions-Policy", "camera=(self), geolocation=(), microphone=(), payment=(), usb=()");
        if (front.isSecure(request) && front.isNamed(request)) {
            request.header("Strict-Transport-Security", A_YEAR);
        }
        if (Doorkeeper.isApi(request)) {
            request.header("Cache-Control", "no-store");
        }
        if (!READING.contains(request.method().name())) {
            refuseOtherSites(request);
        }
    }

    private void after(Context request) {
        if (Optional.ofNullable(request.res().getContentType()).orElse("").startsWith("application/json")) {
            request.header("Content-Security-Policy", JSON_POLICY);
        }
    }

    /**
     * Lets no other site's page write here. Browsers say of every writing request where it comes from; one that does not say it, and
     * yet brings a session along, is not believed. Programs bring their own key, which no browser sends by itself.
     */
    private void refuseOtherSites(Context request) {
        String origin = request.header("Origin");
        String site = request.header("Sec-Fetch-Site");
        boolean ours = site != null ? site.equals("same-origin")
                : origin != null ? origin.equals(front.scheme(request) + "://" + front.host(request)) : request.header("Cookie") == null;
        if (!ours) {
            throw new Refused(403, List.of(new Problem("", origin == null ? "" : origin, "Only Longsummer's own pages may write here.",
                    "Open the page from this address and send it again.")));
        }
    }
}
