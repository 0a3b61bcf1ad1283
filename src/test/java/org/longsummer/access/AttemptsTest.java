package org.longsummer.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The brake on guessing, with a clock that the test turns. */
class AttemptsTest {
    private Instant now = Instant.parse("2026-07-20T18:00:00Z");
    private final Attempts attempts = new Attempts(new Clock() {
        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public java.time.ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }
    });

    private boolean goes(String name, String address) {
        return attempts.take(name, address).isEmpty();
    }

    @Test
    void fiveFailuresOfANameFromAnAddressThenOneEveryThreeMinutes() {
        for (int i = 0; i < 5; i++) {
            assertTrue(goes("Ines", "203.0.113.9"));
        }
        assertEquals(Optional.of(Duration.ofMinutes(3)), attempts.take("  INES ", "203.0.113.9"), "however it is written");
        now = now.plusSeconds(100);
        assertEquals(Optional.of(Duration.ofSeconds(80)), attempts.take("Ines", "203.0.113.9"));
        now = now.plusSeconds(80);
        assertTrue(goes("Ines", "203.0.113.9"));
        assertTrue(!goes("Ines", "203.0.113.9"));
        assertTrue(goes("Ines", "203.0.113.10"), "at another address it is not braked");
    }

    @Test
    void manyNamesFromOneAddressAreBrakedToo() {
        int let = 0;
        for (int i = 0; i < 100; i++) {
            let += goes("name " + i, "203.0.113.9") ? 1 : 0;
        }
        assertEquals(30, let);
        assertTrue(goes("name 1", "203.0.113.10"));
    }

    @Test
    void oneNameFromManyAddressesIsBrakedInTheEndAndOnlyForAMinute() {
        int let = 0;
        for (int i = 0; i < 100; i++) {
            let += goes("Ines", "198.51.100." + i) ? 1 : 0;
        }
        assertEquals(50, let);
        now = now.plusSeconds(60);
        assertTrue(goes("Ines", "203.0.113.9"), "nobody is locked out for good");
    }

    @Test
    void aHouseholdWithManyAddressesOfTheNewKindIsOne() {
        for (int i = 0; i < 5; i++) {
            assertTrue(goes("Ines", "2001:db8:7:1:0:0:0:" + i));
        }
        assertTrue(!goes("Ines", "2001:db8:7:1:aaaa:bbbb:cccc:9"));
        assertTrue(goes("Ines", "2001:db8:7:2:0:0:0:1"));
    }

    @Test
    void beingRightCostsNothing() {
        for (int i = 0; i < 200; i++) {
            assertTrue(goes("Ines", "203.0.113.9"));
            attempts.succeeded("Ines", "203.0.113.9");
        }
    }

    @Test
    void whatIsRememberedIsBounded() {
        for (int i = 0; i < 50_000; i++) {
            attempts.take("name " + i, "10." + (i >> 16) + "." + (i >> 8 & 255) + "." + (i & 255));
        }
        assertTrue(attempts.remembered() <= 20_003);
    }
}
