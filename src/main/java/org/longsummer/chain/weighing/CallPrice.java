package org.longsummer.chain.weighing;

import java.util.Collection;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;

/** What a call costs, by a price list. */
public final class CallPrice {
    private CallPrice() {}

    /** What a unit that quits in season costs beside its repair: the emergency, and the nights lost. */
    public static Money quitting(PriceList prices) {
        return Money.of(prices.number(PriceKey.EMERGENCY_PREMIUM) + prices.number(PriceKey.LOST_NIGHTS) * prices.number(PriceKey.NIGHT_PRICE),
                prices.currency());
    }

    /** All-in: hours and parts of each work, and the call-out once; a new unit's price has its fitting and its call inside. */
    public static Money of(PriceList prices, Collection<Work> works) {
        if (works.contains(Work.UNIT_REPLACED)) {
            return prices.money(PriceKey.REPLACEMENT);
        }
        double amount = 0;
        boolean call = false;
        for (Remedy remedy : Remedy.ALL) {
            if (works.contains(remedy.work())) {
                amount += remedy.price(prices);
                call |= remedy.needsCall();
            }
        }
        return Money.of(amount + (call ? prices.number(PriceKey.CALL_OUT) : 0), prices.currency());
    }
}
