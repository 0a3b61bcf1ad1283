package org.longsummer.chain.weighing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.quantity.Money;

class PriceListLawTest {
    @Test
    void everyKeyIsFoundByItsWordAndItsDefaultIsWithinItsLimits() {
        for (PriceKey key : PriceKey.values()) {
            assertEquals(key, PriceKey.of(key.word()).orElseThrow());
            assertTrue(key.standard() >= key.least() && key.standard() <= key.most(), key.word());
        }
        assertTrue(PriceKey.of("coil").isEmpty());
    }

    @Test
    void aDefaultCanBeToldFromWhatWasGivenEvenWhenTheyAreEqual() {
        PriceList prices = PriceList.defaults("EUR").with(PriceKey.SHOP_RATE, PriceKey.SHOP_RATE.standard());
        assertTrue(prices.isGiven(PriceKey.SHOP_RATE));
        assertFalse(prices.isGiven(PriceKey.CALL_OUT));
        assertEquals(Money.of(150, "EUR"), prices.money(PriceKey.SHOP_RATE));
    }

    @Test
    void theOwnListOfADepotComesBeforeTheFleets() {
        PriceList fleet = PriceList.defaults("EUR").with(PriceKey.CALL_OUT, 80).with(PriceKey.NIGHT_PRICE, 70);
        PriceList depot = PriceList.defaults("EUR").with(PriceKey.CALL_OUT, 300);
        assertEquals(300, fleet.overriddenBy(depot).number(PriceKey.CALL_OUT));
        assertEquals(70, fleet.overriddenBy(depot).number(PriceKey.NIGHT_PRICE));
        assertThrows(IllegalArgumentException.class, () -> fleet.overriddenBy(PriceList.defaults("USD")));
    }

    @Test
    void twoAgesMakeALifeCurveAndNoneLeavesTheOneThatStands() {
        PriceList prices = PriceList.defaults("USD");
        assertEquals(LifeCurve.RENTAL, prices.life(LifeCurve.RENTAL));
        LifeCurve own = prices.with(PriceKey.LIFE_EARLY, 3).with(PriceKey.LIFE_LATE, 9).life(LifeCurve.RENTAL);
        assertEquals(LifeCurve.Origin.USER, own.origin());
        assertEquals(0.9, own.years().survival(3), 1e-12);
        assertEquals(0.1, own.years().survival(9), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> prices.with(PriceKey.LIFE_LATE, 4).life(LifeCurve.RENTAL));
    }

    @Test
    void refusesWhatCannotBeNamingTheKeyAndTheLimits() {
        String message = assertThrows(IllegalArgumentException.class, () -> PriceList.defaults("USD").with(PriceKey.OCCUPANCY, 60)).getMessage();
        assertTrue(message.contains("occupancy") && message.contains("60") && message.contains("0 to 1"), message);
        assertThrows(IllegalArgumentException.class, () -> PriceList.defaults("USD").with(PriceKey.SHOP_RATE, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> PriceList.defaults("dollars"));
        assertThrows(IllegalArgumentException.class, () -> PriceList.defaults("USD").money(PriceKey.OCCUPANCY));
    }
}
