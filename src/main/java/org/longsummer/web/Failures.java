package org.longsummer.web;

import com.fasterxml.jackson.core.JacksonException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import org.eclipse.jetty.http.HttpException;
import org.longsummer.wire.Problem;
import java.util.Optional;
import org.longsummer.store.Trouble;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns whatever goes wrong into the one shape of an error. */
final class Failures {
    private static final String SECONDS_TO_WAIT = "30";
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
            if (isBadlyFormed(failure)) {
                answer(request, 400, new Problem("", "", "The request is not formed as it says.", "Check it and send it again."));
                return;
            }
            Optional<Trouble> trouble = Trouble.in(failure);
            if (trouble.isPresent()) {
                answer(request, trouble.get());
                return;
            }
            LOG.atError().addKeyValue("method", request.method().name()).addKeyValue("route", RequestLog.route(request))
                    .setCause(failure).log("failed");
            answer(request, 500, new Problem("", "", "Longsummer failed at this; nothing was changed.",
                    "Try again; if it stays, the program's output says why."));
        });
        routes.error(404, Failures::pageNotFound);
    }

    /** The web server could not take the request apart, such as a form of files without its boundary. */
    private static boolean isBadlyFormed(Throwable failure) {
        return failure != null && (failure instanceof HttpException || isBadlyFormed(failure.getCause()));
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

    /** It is no fault of the request: it may be sent again as it is. */
    private static void answer(Context request, Trouble trouble) {
        LOG.atError().addKeyValue("method", request.method().name()).addKeyValue("route", RequestLog.route(request))
                .addKeyValue("trouble", trouble.word()).log("trouble");
        request.header("Retry-After", SECONDS_TO_WAIT);
        answer(request, trouble == Trouble.DISK_FULL ? 507 : 503, new Problem("", "", trouble.limit(), trouble.remedy()));
    }

    private static void answer(Context request, int status, Problem problem) {
        answer(request, status, List.of(problem));
    }

    private static void answer(Context request, int status, List<Problem> problems) {
        request.status(status).json(new Problems(problems));
    }
}
