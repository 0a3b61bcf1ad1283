package org.longsummer.chain.weighing;

/** What can be done about a unit. */
public enum Option {
    KEEP("keep"),
    CLEAN("clean"),
    REPAIR("repair"),
    REPLACE("replace");

    private final String word;

    Option(String word) {
        this.word = word;
    }

    /** The word in files and on a screen. */
    public String word() {
        return word;
    }
}
