package org.longsummer.chain.visit;

/** How the cold air reaches the room. */
public enum AirDelivery {
    /** Through ceiling ducts to registers. */
    DUCTED,
    /** Straight down from the ceiling box. */
    NON_DUCTED,
    UNKNOWN
}
