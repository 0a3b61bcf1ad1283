package org.longsummer.chain.condition;

import java.util.List;

/** Named condition of a machine. */
public enum Condition {
    NONE("none", "nothing wrong"),
    CONDENSER_FOULING("condenser_fouling", "dirty condenser coil"),
    EVAPORATOR_FOULING("evaporator_fouling", "dirty filter or evaporator coil"),
    REFRIGERANT_LOSS("refrigerant_loss", "refrigerant loss"),
    COMPRESSOR_WEAR("compressor_wear", "compressor wear"),
    CAPACITOR_WEAK("capacitor_weak", "weak run capacitor"),
    AIR_RECIRCULATION("air_recirculation", "cold air leaking into the return"),
    OTHER("other", "a fault outside the six"),
    NOT_COOLING("not_cooling", "compressor not running");

    private final String word;
    private final String phrase;

    Condition(String word, String phrase) {
        this.word = word;
        this.phrase = phrase;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /** The words on a screen. */
    public String phrase() {
        return phrase;
    }

    /** The six conditions that a history can tell, in the order of the files. */
    public static List<Condition> six() {
        return SIX;
    }

    private static final List<Condition> SIX = List.of(CONDENSER_FOULING, EVAPORATOR_FOULING, REFRIGERANT_LOSS,
            COMPRESSOR_WEAR, CAPACITOR_WEAK, AIR_RECIRCULATION);
}
