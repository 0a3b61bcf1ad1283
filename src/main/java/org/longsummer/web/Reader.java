package org.longsummer.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.wire.Problem;

/** What a request says about its reader and about the part of a list that is wanted. */
final class Reader {
    private Reader() {}

    /** The reader's system of units, {@code system=us} or {@code system=si}. */
    static UnitSystem system(Context request) {
        String given = request.queryParam("system");
        if (given == null || given.equals("us")) {
            return UnitSystem.US;
        }
        if (given.equals("si")) {
            return UnitSystem.SI;
        }
        throw new Refused(400, List.of(new Problem("system", given, "Either us or si.", "Leave it out for us.")));
    }

    /** The body's JSON as a record. */
    static <T> T body(Context request, Class<T> kind) {
        if (request.body().isBlank() || request.body().strip().equals("null")) {
            throw new Refused(400, List.of(new Problem("", request.body(), "A JSON object belongs in the body.",
                    "Send the names of the boxes and their texts.")));
        }
        return request.bodyAsClass(kind);
    }

    /** A parameter's text, when it is there and not blank. */
    static Optional<String> text(Context request, String parameter) {
        return Optional.ofNullable(request.queryParam(parameter)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** A page's number, from 1. */
    static int page(Context request) {
        Optional<String> given = text(request, "page");
        if (given.isPresent() && !given.get().matches("[1-9]\\d{0,6}")) {
            throw new Refused(400, List.of(new Problem("page", given.get(), "A whole number from 1.", "Leave it out for the first page.")));
        }
        return given.map(Integer::parseInt).orElse(1);
    }
}
