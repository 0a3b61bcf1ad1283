package org.longsummer.chain.weighing;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.visit.Work;

/** What can hurt, to be said wherever work is proposed. */
public enum Caution {
    LICENCE("Advice from readings. Local codes, the maker's manual and licensed practice come first."),
    MAINS("Mains voltage inside: qualified people only. Unplug the shore cord, switch generator auto-start and inverter off, lock and tag, "
            + "and measure that it is dead."),
    CAPACITOR("Capacitors hold their charge after the power is off: discharge through a resistor and verify before touching."),
    ROOF("Roof: mind the edge, wet, wind, lightning and the load rating; tie the ladder."),
    CLEANER("Coil cleaner burns eyes and skin: goggles and gloves; keep water out of the electrical box and let the coils dry for 30 minutes."),
    REFRIGERANT("Refrigerant: opening the sealed circuit needs a certified person, venting is illegal in many countries, and the newer "
            + "refrigerants burn. It is seldom worth it on a unit of this size."),
    WEIGHT("A roof unit weighs as much as a grown person: lift with a hoist or with help, and have the electrical and gas-tight joints checked.");

    private final String text;

    Caution(String text) {
        this.text = text;
    }

    /** One or two sentences. */
    public String text() {
        return text;
    }

    /** The cautions of some works, most general first; none where nothing is proposed. */
    public static List<Caution> of(List<Work> works) {
        List<Caution> cautions = new ArrayList<>();
        boolean inside = works.stream().anyMatch(work -> work != Work.FILTER);
        add(cautions, LICENCE, !works.isEmpty());
        add(cautions, MAINS, inside);
        add(cautions, CAPACITOR, works.contains(Work.CAPACITOR) || works.contains(Work.FAN_MOTOR) || works.contains(Work.UNIT_REPLACED));
        add(cautions, ROOF, works.stream().anyMatch(work -> work != Work.FILTER && work != Work.DIVIDER && work != Work.EVAPORATOR_COIL));
        add(cautions, CLEANER, works.contains(Work.CONDENSER_COIL) || works.contains(Work.EVAPORATOR_COIL));
        add(cautions, REFRIGERANT, works.contains(Work.SEALED_SYSTEM));
        add(cautions, WEIGHT, works.contains(Work.UNIT_REPLACED));
        return cautions;
    }

    private static void add(List<Caution> cautions, Caution caution, boolean applies) {
        if (applies) {
            cautions.add(caution);
        }
    }
}
