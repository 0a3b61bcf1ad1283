package org.longsummer.web;

import io.javalin.http.Context;
import io.javalin.router.Endpoint;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One line for each request that asks for something stored, or that fails: the address as it stands in {@link Routes}, not as it was
 * called, since that has names in it.
 */
final class RequestLog {
    private static final Logger LOG = LoggerFactory.getLogger(RequestLog.class);
    private static final String PAGE = "(page)";
    private static final int FAILED = 500;

    private RequestLog() {}

    static void note(Context request, float milliseconds) {
        int status = request.statusCode();
        String route = route(request);
        if (route.equals(PAGE) && status < FAILED) {
            return;
        }
        (status < FAILED ? LOG.atInfo() : LOG.atWarn()).addKeyValue("method", request.method().name()).addKeyValue("route", route)
                .addKeyValue("status", status).addKeyValue("ms", (int) milliseconds).log("request");
    }

    /** The address with its places for names, such as {@code /api/units/{unit}}. */
    static String route(Context request) {
        Endpoint matched = request.endpoints().matchedHttpEndpoint();
        return matched == null ? PAGE : matched.path;
    }
}
