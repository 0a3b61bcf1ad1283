package org.longsummer.chain.visit;

/** Where the outdoor temperature was read. */
public enum AmbientAt {
    /** In the shade at the condenser's inlet. */
    INLET,
    /** On the ground, where the thermometer misses the heat over the roof. */
    GROUND,
    UNKNOWN
}
