package org.longsummer.store;

/**
 * One figure of a price list as somebody gave it.
 *
 * @param scope whose it is
 * @param key the figure's key, or {@link #CURRENCY}
 * @param amount its number in the currency's major unit, or the three letters of the currency
 */
public record PriceFigure(PriceScope scope, String key, String amount) {
    /** The key of the fleet's currency. */
    public static final String CURRENCY = "currency";
}
