package org.longsummer.chain;

/** By which rules visits are judged. */
public final class Method {
    /**
     * Raised by one with every change that changes a verdict, so that what an earlier version stored is judged again. A test holds what
     * this number says of an invented fleet.
     */
    public static final int NUMBER = 1;

    private Method() {}
}
