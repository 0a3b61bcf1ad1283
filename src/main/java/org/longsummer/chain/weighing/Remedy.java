package org.longsummer.chain.weighing;

import java.util.List;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.visit.Work;

/**
 * A piece of work as it is priced: its hours and part, what it cures, and how often it does when that is what is wrong. The chances of
 * curing are ours.
 */
enum Remedy {
    FILTER(Work.FILTER, null, PriceKey.FILTER_PART, true, 0.97),
    CONDENSER_COIL(Work.CONDENSER_COIL, PriceKey.COIL_HOURS, null, true, 0.92),
    EVAPORATOR_COIL(Work.EVAPORATOR_COIL, PriceKey.COIL_HOURS, null, true, 0.92),
    CAPACITOR(Work.CAPACITOR, PriceKey.CAPACITOR_HOURS, PriceKey.CAPACITOR_PART, false, 0.95),
    DIVIDER(Work.DIVIDER, PriceKey.DIVIDER_HOURS, PriceKey.DIVIDER_PART, false, 0.90),
    FAN_MOTOR(Work.FAN_MOTOR, PriceKey.FAN_MOTOR_HOURS, PriceKey.FAN_MOTOR_PART, false, 0.85),
    /** Leak found and charge put back, or a compressor changed, on a unit that was never made to be opened. */
    SEALED_SYSTEM(Work.SEALED_SYSTEM, PriceKey.SEALED_SYSTEM_HOURS, PriceKey.SEALED_SYSTEM_PART, false, 0.55);

    static final List<Remedy> ALL = List.of(values());

    private final Work work;
    private final PriceKey hours;
    private final PriceKey part;
    private final boolean cleaning;
    private final double chance;

    Remedy(Work work, PriceKey hours, PriceKey part, boolean cleaning, double chance) {
        this.work = work;
        this.hours = hours;
        this.part = part;
        this.cleaning = cleaning;
        this.chance = chance;
    }

    /** The remedy of a fault. */
    static Remedy against(Fault fault) {
        for (Remedy remedy : ALL) {
            if (remedy.work == fault.cure()) {
                return remedy;
            }
        }
        throw new IllegalArgumentException("no price for the work that cures " + fault);
    }

    Work work() {
        return work;
    }

    boolean isCleaning() {
        return cleaning;
    }

    /** Whether a technician has to be called for it. */
    boolean needsCall() {
        return this != FILTER;
    }

    /** Chance that it cures what is wrong; 0 for what it does not touch. */
    double cures(Hypothesis state) {
        return state.fault().isPresent() && state.fault().get().cure() == work ? chance : 0;
    }

    /** Hours and part, without the call-out. */
    double price(PriceList prices) {
        double labour = hours == null ? 0 : prices.number(hours) * prices.number(PriceKey.SHOP_RATE);
        return labour + (part == null ? 0 : prices.number(part));
    }
}
