package org.longsummer.quantity;

/**
 * An amount of money, exact: whole minor units with their currency.
 *
 * <p>Sums and differences are exact and refuse a second currency. Only {@link #of(double, String)} and {@link #times(double)} round, to
 * the nearest minor unit, halves away from zero.
 *
 * @param minor amount in minor units, such as cents
 * @param currency three capital letters (ISO 4217), such as {@code USD}
 */
public record Money(long minor, String currency) implements Comparable<Money> {
    private static final String WITHOUT_MINOR_UNIT = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF ";
    private static final String THOUSANDTHS = "BHD IQD JOD KWD LYD OMR TND ";
    private static final double LARGEST = 9e15;

    public Money {
        if (!isCurrency(currency)) {
            throw new IllegalArgumentException("currency: " + currency + " given; give three capital letters, such as USD");
        }
    }

    /**
     * From an amount in the currency's major unit.
     *
     * @throws IllegalArgumentException for an amount that is not finite or beyond 9e15 minor units
     */
    public static Money of(double amount, String currency) {
        double scaled = Math.abs(amount) * scale(currency);
        if (!(scaled < LARGEST)) {
            throw new IllegalArgumentException("amount of money: " + amount + " given; give a number of at most 9e15 minor units");
        }
        long minor = (long) (scaled + 0.5 + 1e-9);
        return new Money(amount < 0 ? -minor : minor, currency);
    }

    public static Money zero(String currency) {
        return new Money(0, currency);
    }

    /** Whether a text has the form of a currency code. */
    public static boolean isCurrency(String text) {
        if (text == null || text.length() != 3) {
            return false;
        }
        for (int i = 0; i < 3; i++) {
            if (text.charAt(i) < 'A' || text.charAt(i) > 'Z') {
                return false;
            }
        }
        return true;
    }

    /** Digits after the decimal point in a currency (ISO 4217): mostly two. */
    public static int decimals(String currency) {
        return WITHOUT_MINOR_UNIT.contains(currency + " ") ? 0 : THOUSANDTHS.contains(currency + " ") ? 3 : 2;
    }

    /** The amount in the currency's major unit. */
    public double amount() {
        return minor / scale(currency);
    }

    public Money plus(Money other) {
        requireSame(other);
        return new Money(Math.addExact(minor, other.minor), currency);
    }

    public Money minus(Money other) {
        requireSame(other);
        return new Money(Math.subtractExact(minor, other.minor), currency);
    }

    /** Rounded to the minor unit. */
    public Money times(double factor) {
        return of(amount() * factor, currency);
    }

    @Override
    public int compareTo(Money other) {
        requireSame(other);
        return Long.compare(minor, other.minor);
    }

    /** The exact number, for a file: {@code -12.50}. */
    public String number() {
        long scale = (long) scale(currency);
        String sign = minor < 0 ? "-" : "";
        long magnitude = Math.abs(minor);
        if (scale == 1) {
            return sign + magnitude;
        }
        String fraction = Long.toString(magnitude % scale);
        return sign + magnitude / scale + "." + "0".repeat(decimals(currency) - fraction.length()) + fraction;
    }

    /** For a sentence: whole major units from ten up, as an estimate is said; with the currency's code. */
    public String text() {
        return (Math.abs(amount()) >= 10 ? Decimal.text(amount(), 0) : Decimal.text(amount(), decimals(currency))) + " " + currency;
    }

    private void requireSame(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("amounts in " + currency + " and " + other.currency + " cannot be added or compared");
        }
    }

    private static double scale(String currency) {
        int decimals = decimals(currency);
        return decimals == 2 ? 100 : decimals == 0 ? 1 : 1000;
    }
}
