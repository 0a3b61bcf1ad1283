package org.longsummer.chain.visit;

/** What the amps on a plate mean. */
public enum AmpsKind {
    /** Total running amps at the rating point. */
    INPUT,
    /** Rated load amps of the compressor alone. */
    RLA,
    /** Rated load amps of the compressor plus full load amps of the fan: a ceiling for wiring, not a reading. */
    RLA_PLUS_FAN,
    UNKNOWN
}
