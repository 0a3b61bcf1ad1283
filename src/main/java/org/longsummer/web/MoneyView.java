package org.longsummer.web;

import org.longsummer.quantity.Money;

/**
 * An amount of money on a page.
 *
 * @param minor exact, in minor units
 * @param currency its three letters
 * @param text as an estimate is said, with the currency
 */
record MoneyView(long minor, String currency, String text) {
    static MoneyView of(Money money) {
        return new MoneyView(money.minor(), money.currency(), money.text());
    }
}
