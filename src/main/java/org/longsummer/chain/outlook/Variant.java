package org.longsummer.chain.outlook;

import java.util.Optional;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.Fault;

/** A condition as it grows and as it is worked on: filter and evaporator coil are one condition to a thermometer and two jobs. */
public enum Variant {
    NONE(Condition.NONE, "nothing wrong"),
    CONDENSER_COIL(Condition.CONDENSER_FOULING, "a dirty condenser coil"),
    EVAPORATOR_COIL(Condition.EVAPORATOR_FOULING, "a dirty evaporator coil"),
    FILTER(Condition.EVAPORATOR_FOULING, "a dirty filter"),
    REFRIGERANT(Condition.REFRIGERANT_LOSS, "refrigerant loss"),
    COMPRESSOR(Condition.COMPRESSOR_WEAR, "compressor wear"),
    CAPACITOR(Condition.CAPACITOR_WEAK, "a weak run capacitor"),
    DIVIDER(Condition.AIR_RECIRCULATION, "a leaking divider"),
    FAN_DRAG(Condition.OTHER, "a dragging fan motor or another fault outside the six");

    /** How many there are. */
    public static final int COUNT = values().length;
    private static final Variant[] OF_FAULT = new Variant[Fault.values().length];

    static {
        for (Fault fault : Fault.values()) {
            OF_FAULT[fault.ordinal()] = valueOf(fault.name());
        }
    }

    private final Condition condition;
    private final String phrase;

    Variant(Condition condition, String phrase) {
        this.condition = condition;
        this.phrase = phrase;
    }

    /** The variant of a condition; {@code filter} matters for evaporator fouling only. */
    public static Variant of(Condition condition, boolean filter) {
        return switch (condition) {
            case NONE -> NONE;
            case CONDENSER_FOULING -> CONDENSER_COIL;
            case EVAPORATOR_FOULING -> filter ? FILTER : EVAPORATOR_COIL;
            case REFRIGERANT_LOSS -> REFRIGERANT;
            case COMPRESSOR_WEAR -> COMPRESSOR;
            case CAPACITOR_WEAK -> CAPACITOR;
            case AIR_RECIRCULATION -> DIVIDER;
            case OTHER -> FAN_DRAG;
            case NOT_COOLING -> throw new IllegalArgumentException("a compressor that does not run is seen, not a hypothesis");
        };
    }

    /** The fault of the history's lattice; empty for nothing. */
    public Optional<Fault> fault() {
        return this == NONE ? Optional.empty() : Optional.of(Fault.valueOf(name()));
    }

    /** The variant of a fault of the history's lattice. */
    public static Variant of(Optional<Fault> fault) {
        return fault.isPresent() ? OF_FAULT[fault.get().ordinal()] : NONE;
    }

    public Condition condition() {
        return condition;
    }

    public String phrase() {
        return phrase;
    }

    /** Whether it sits in the sealed circuit, which nobody opens on a roof. */
    public boolean isSealed() {
        return this == REFRIGERANT || this == COMPRESSOR;
    }
}
