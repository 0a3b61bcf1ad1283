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

    static EvaporatorPart of(double filter, double coil) {
        return filter > 3 * coil ? FILTER : coil > 3 * filter ? COIL : CANNOT_TELL;
    }
}
