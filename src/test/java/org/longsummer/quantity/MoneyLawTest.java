package org.longsummer.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class MoneyLawTest {
    @Test
    void tenDimesAreADollarExactly() {
        Money sum = Money.zero("USD");
        for (int i = 0; i < 10; i++) {
            sum = sum.plus(Money.of(0.1, "USD"));
        }
        assertEquals(Money.of(1, "USD"), sum);
        assertEquals(Money.zero("USD"), sum.minus(Money.of(1, "USD")));
    }

    @Test
    void numberAndAmountGoThereAndBack() {
        for (long minor : new long[] {0, 5, 50, 99, 100, 190_000, -1, -99, -12_345, 123_456_789_012L}) {
            for (String currency : new String[] {"USD", "JPY", "KWD"}) {
                Money money = new Money(minor, currency);
                assertEquals(money, Money.of(Double.parseDouble(money.number()), currency));
                assertEquals(money, Money.of(money.amount(), currency));
            }
        }
    }

    @Test
    void halvesRoundAwayFromZeroOnBothSides() {
        assertEquals(13, Money.of(0.125, "USD").minor());
        assertEquals(-13, Money.of(-0.125, "USD").minor());
    }

    @Test
    void printsWithTheCurrencysOwnDecimals() {
        assertEquals("1900.00", Money.of(1900, "USD").number());
        assertEquals("-0.05", Money.of(-0.05, "EUR").number());
        assertEquals("1900", Money.of(1900, "JPY").number());
        assertEquals("1.250", Money.of(1.25, "KWD").number());
        assertEquals("1900 USD", Money.of(1899.6, "USD").text());
        assertEquals("4.50 USD", Money.of(4.5, "USD").text());
    }

    @Test
    void refusesMixedCurrenciesAndWhatIsNone() {
        assertThrows(IllegalArgumentException.class, () -> Money.of(1, "USD").plus(Money.of(1, "EUR")));
        assertThrows(IllegalArgumentException.class, () -> Money.of(1, "USD").compareTo(Money.of(1, "EUR")));
        assertThrows(IllegalArgumentException.class, () -> Money.of(1, "usd"));
        assertThrows(IllegalArgumentException.class, () -> Money.of(Double.NaN, "USD"));
        assertThrows(ArithmeticException.class, () -> new Money(Long.MAX_VALUE, "USD").plus(new Money(1, "USD")));
    }
}
