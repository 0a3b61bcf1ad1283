package org.longsummer.chain.condition;

/** State of a visit; a unit's state is that of its last judged visit. */
public enum State {
    STEADY("steady"),
    DRIFTING("drifting"),
    ACT("act"),
    RETAKE("retake");

    private final String word;

    State(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
