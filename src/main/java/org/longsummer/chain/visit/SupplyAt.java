package org.longsummer.chain.visit;

/** Where the supply air was read. */
public enum SupplyAt {
    /** At the discharge louver, or before any duct. */
    DISCHARGE,
    NEAR_REGISTER,
    /** A far register reads warmer by what the duct gains. */
    FAR_REGISTER,
    UNKNOWN
}
