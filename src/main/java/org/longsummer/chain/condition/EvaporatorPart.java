package org.longsummer.chain.condition;

/** Where air is held up before the evaporator: one is free to mend, the other a job. */
public enum EvaporatorPart {
    FILTER("the filter"),
    COIL("the evaporator coil"),
    CANNOT_TELL("the filter or the evaporator coil");

    private final String phrase;

    EvaporatorPart(String phrase) {
        this.phrase = phrase;
    }

    public String phrase() {
        return phrase;
    }

    /** Before anything was read one may stand at just three times the other; the last digit of a sum must not decide that. */
    private static final double CLEARLY = 3 * (1 + 1e-9);

    static EvaporatorPart of(double filter, double coil) {
        return filter > CLEARLY * coil ? FILTER : coil > CLEARLY * filter ? COIL : CANNOT_TELL;
    }
}
