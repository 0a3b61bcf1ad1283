package org.longsummer.chain.visit;

/** A piece of work done after the readings of a visit. */
public enum Work {
    FILTER,
    EVAPORATOR_COIL,
    CONDENSER_COIL,
    CAPACITOR,
    /** The divider between supply and return in the ceiling box was sealed. */
    DIVIDER,
    /** The fan motor was replaced. */
    FAN_MOTOR,
    /** Work on the sealed circuit: leak, charge, compressor. */
    SEALED_SYSTEM,
    /** A new machine in the same place. */
    UNIT_REPLACED
}
