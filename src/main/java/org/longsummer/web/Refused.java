package org.longsummer.web;

import java.util.List;
import org.longsummer.wire.Problem;

/** A request that is not carried out, with all that is wrong about it at once. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;
    private final int status;

    Refused(int status, List<Problem> problems) {
        super(problems.toString());
        this.status = status;
        this.problems = List.copyOf(problems);
    }

    /** Ends the reading of a form when anything is wrong with it. */
    static void ifAny(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw new Refused(422, problems);
        }
    }

    /** What was asked for is not there. */
    static Refused unknown(String field, String given, String limit) {
        return new Refused(404, List.of(new Problem(field, given, limit, "Look for it in the yard.")));
    }

    /** It clashes with what was stored meanwhile. */
    static Refused conflict(String field, String given, String limit, String remedy) {
        return new Refused(409, List.of(new Problem(field, given, limit, remedy)));
    }

    int status() {
        return status;
    }

    List<Problem> problems() {
        return problems;
    }
}
