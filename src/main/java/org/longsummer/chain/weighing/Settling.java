package org.longsummer.chain.weighing;

import org.longsummer.chain.condition.NextBestReading;
import org.longsummer.quantity.Money;

/**
 * A reading or look that could change the advice.
 *
 * @param reading what to read or look at
 * @param price its minutes at the shop rate, and a call-out where somebody has to come for it
 * @param worth expected saving of deciding with it instead of without, before its price
 */
public record Settling(NextBestReading.Kind reading, Money price, Money worth) {
    /** Whether it is worth its price. */
    public boolean pays() {
        return worth.compareTo(price) > 0;
    }
}
