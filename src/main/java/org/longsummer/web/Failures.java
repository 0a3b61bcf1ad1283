package org.longsummer.web;

import com.fasterxml.jackson.core.JacksonException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import org.longsummer.wire.Problem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns whatever goes wrong into the one shape of an error. */
final class Failures {
    private static final Logger LOG = LoggerFactory.getLogger(Failures.class);

    private Failures() {}

    /** All problems of a request. */
    record Problems(List<Problem> problems) {}

    static void lay(RoutesConfig routes) {
        routes.exception(Refused.class, (refused, request) -> answer(request, refused.status(), refused.problems()));
        routes.exception(JacksonException.class, (broken, request) -> answer(request, 400, new Problem("", "",
                "The body is not the JSON that this address takes.", "Send an object with the names of the boxes and their texts.")));
        routes.exception(HttpResponseException.class, (failure, request) -> answer(request, failure.getStatus(), new Problem("", "",
                failure.getMessage() + ".", "Check the request and send it again.")));
        routes.exception(Exception.class, (failure, request) -> {
            LOG.error("{} {} failed", request.method(), request.path(), failure);
            answer(request, 500, new Problem("", "", "Longsummer failed at this; nothing was changed.",
                    "Try again; if it stays, the program's output says why."));
        });
        routes.error(404, Failures::pageNotFound);
    }

    static void unknownAddress(Context request) {
        answer(request, 404, new Problem("", request.path(), "There is nothing at this address.", "See the list of addresses."));
    }

    private static void pageNotFound(Context request) {
        if (!Doorkeeper.isApi(request)) {
            request.html("<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Not here – Longsummer</title>"
                    + "<h1>There is no page here</h1><p><a href=\"" + request.contextPath() + "/yard/\">To the yard</a></p></html>");
        }
    }

    private static void answer(Context request, int status, Problem problem) {
        answer(request, status, List.of(problem));
    }

    private static void answer(Context request, int status, List<Problem> problems) {
        request.status(status).json(new Problems(problems));
    }
}
