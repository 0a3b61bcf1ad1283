package org.longsummer.chain.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.Fault;
import org.longsummer.quantity.Altitude;

/** What a fault is said to show is its effect just where it may no longer be accepted. */
class FaultSignLawTest {
    private static final double ROUNDING = 1e-9;

    @Test
    void everyFaultIsShownAtItsLimit() {
        var signs = FaultSign.all(TypicalWeather.faultModel(Altitude.SEA_LEVEL));
        assertEquals(Fault.values().length, signs.size());
        for (FaultSign sign : signs) {
            boolean atOne = Math.abs(sign.capacity() - Effects.LEAST_CAPACITY) < ROUNDING || Math.abs(sign.amps() - Effects.MOST_AMPS) < ROUNDING;
            boolean beyondNone = sign.capacity() > Effects.LEAST_CAPACITY - ROUNDING && sign.amps() < Effects.MOST_AMPS + ROUNDING;
            assertTrue(atOne && beyondNone, sign::toString);
            assertTrue(sign.fault().toldBy().endsWith("."), sign.fault()::name);
        }
    }

    @Test
    void aChangeIsSaidByItsSideAndASmallOneNotAtAll() {
        assertEquals("8 % lower", OutlookWording.change(0.92));
        assertEquals("12 % higher", OutlookWording.change(1.12));
        assertEquals("hardly changed", OutlookWording.change(1.009));
    }
}
