package org.longsummer.chain.weighing;

import java.util.EnumMap;
import java.util.Optional;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Money;
import org.longsummer.science.statistics.Weibull;

/**
 * Prices and figures of use of a fleet, a depot or a unit. What was not given is a default of ours and can be told from what was.
 *
 * <p>Money is exact in minor units, except a price a kWh, which is often a fraction of them.
 */
public final class PriceList {
    /** Ours. */
    private static final double HIRED_FROM = 0.5;

    private final String currency;
    private final EnumMap<PriceKey, Double> given;

    private PriceList(String currency, EnumMap<PriceKey, Double> given) {
        this.currency = currency;
        this.given = given;
    }

    /** Our defaults, in a currency: the figures were thought in US dollars and are not converted. */
    public static PriceList defaults(String currency) {
        return new PriceList(Money.zero(currency).currency(), new EnumMap<>(PriceKey.class));
    }

    /**
     * The same with one figure changed.
     *
     * @throws IllegalArgumentException naming the key, what was given and the limits
     */
    public PriceList with(PriceKey key, double value) {
        if (!(value >= key.least() && value <= key.most())) {
            throw new IllegalArgumentException(key.word() + ": " + value + " given; give " + plain(key.least()) + " to " + plain(key.most())
                    + " (" + key.meaning() + ")");
        }
        EnumMap<PriceKey, Double> changed = new EnumMap<>(given);
        changed.put(key, value);
        return new PriceList(currency, changed);
    }

    /** A list for one depot or unit: its own figures before these. */
    public PriceList overriddenBy(PriceList own) {
        if (!currency.equals(own.currency)) {
            throw new IllegalArgumentException("currency: " + own.currency + " given over " + currency + "; give one currency");
        }
        EnumMap<PriceKey, Double> merged = new EnumMap<>(given);
        merged.putAll(own.given);
        return new PriceList(currency, merged);
    }

    public String currency() {
        return currency;
    }

    /** An amount in the currency's major unit, a number or a share. */
    public double number(PriceKey key) {
        Double value = given.get(key);
        return value == null ? key.standard() : value;
    }

    /** An amount of money, exact. */
    public Money money(PriceKey key) {
        if (key.kind() != PriceKey.Kind.MONEY) {
            throw new IllegalArgumentException(key.word() + " is no amount of money");
        }
        return Money.of(number(key), currency);
    }

    /** Whether it was given, and is not a default of ours. */
    public boolean isGiven(PriceKey key) {
        return given.containsKey(key);
    }

    /**
     * The life curve of the two ages in the list, where one was given; otherwise the one that stands.
     *
     * @throws IllegalArgumentException when the early age is not before the late one
     */
    public LifeCurve life(LifeCurve standing) {
        if (!isGiven(PriceKey.LIFE_EARLY) && !isGiven(PriceKey.LIFE_LATE)) {
            return standing;
        }
        double early = number(PriceKey.LIFE_EARLY);
        double late = number(PriceKey.LIFE_LATE);
        if (early >= late) {
            throw new IllegalArgumentException(PriceKey.LIFE_EARLY.word() + ": " + plain(early) + " given; give an age before "
                    + PriceKey.LIFE_LATE.word() + ", " + plain(late));
        }
        return new LifeCurve(Weibull.through(early, 0.9, late, 0.1), LifeCurve.Origin.USER, 0);
    }

    /** The life curve of the two ages in the list, or of the duty: used on half of the season's days or more, a unit lives a hired one's life. */
    public LifeCurve life() {
        return lifeOr(Optional.empty());
    }

    /** The same, where the user gave no ages by the curve of his own units, once enough of them have ended for one. */
    public LifeCurve lifeOr(Optional<LifeCurve> own) {
        return life(own.orElse(number(PriceKey.OCCUPANCY) >= HIRED_FROM ? LifeCurve.RENTAL : LifeCurve.PRIVATE));
    }

    /** Another list of the same currency and the same figures. */
    @Override
    public boolean equals(Object other) {
        return other instanceof PriceList list && currency.equals(list.currency) && given.equals(list.given);
    }

    @Override
    public int hashCode() {
        return 31 * currency.hashCode() + given.size();
    }

    private static String plain(double value) {
        return value == Math.floor(value) ? Decimal.text(value, 0) : Decimal.text(value, 2);
    }
}
