package org.longsummer.chain.weighing;

import java.util.List;
import java.util.Optional;
import org.longsummer.quantity.Money;

/**
 * Keep, clean, repair and replace side by side.
 *
 * @param circumstances what it was made from
 * @param prices the price list used
 * @param options one cost an option, in the order keep, clean, repair, replace
 * @param advice what is worth doing
 * @param settling readings that could change the advice, most worth for its price first
 * @param worthOfKnowing expected saving if the true state were known before deciding: no reading is worth more
 */
public record Weighing(Circumstances circumstances, PriceList prices, List<OptionCost> options, Advice advice, List<Settling> settling,
        Money worthOfKnowing) {
    public Weighing {
        options = List.copyOf(options);
        settling = List.copyOf(settling);
    }

    public OptionCost cost(Option option) {
        return options.get(option.ordinal());
    }

    /** The reading to take before anything is paid for, when one is worth its price. */
    public Optional<Settling> firstSettle() {
        return settling.isEmpty() || !settling.get(0).pays() ? Optional.empty() : Optional.of(settling.get(0));
    }
}
