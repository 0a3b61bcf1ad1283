package org.longsummer.chain.condition;

/** What a history can be judged without, to see what it is worth. The product leaves nothing out. */
enum Ingredient {
    /** The unit is compared with its class for ever, never with itself. */
    UNIT_BASELINE,
    /** Every reading that is not recognised as a mistake is taken at its word. */
    MISTAKES,
    /** Faults grow by the calendar, in winter as in summer. */
    RUN_HOUR_CLOCK,
    /** Readings of one day are taken as independent witnesses. */
    SAME_DAY,
    /** Readings scatter as instruments and model allow for, whatever this unit's have done. */
    SCATTER
}
