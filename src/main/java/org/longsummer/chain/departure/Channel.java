package org.longsummer.chain.departure;

/** What a visit observes of a unit as ln(measured / expected). */
public enum Channel {
    SPLIT,
    AMPS,
    /** Air leaving minus air entering the condenser. */
    CONDENSER_RISE,
    FAN_ONLY;

    public static final int COUNT = 4;
}
