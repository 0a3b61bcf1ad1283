package org.longsummer.chain.condition;

import java.util.List;
import org.longsummer.quantity.UnitSystem;

/** Says a verdict in plain words; the same on a server and on a phone. */
public final class Wording {
    private Wording() {}

    /** The one sentence that stands before any number. */
    public static String sentence(Verdict verdict, UnitSystem system) {
        return verdict.state().word();
    }

    /** What speaks for and against, one sentence each, strongest first. */
    public static List<String> reasons(Verdict verdict, UnitSystem system) {
        return verdict.evidence().stream().map(Evidence::text).toList();
    }

    /** What cannot be told apart, in full; empty when everything that matters can. */
    public static List<String> cannotTell(Verdict verdict) {
        return List.of();
    }
}
