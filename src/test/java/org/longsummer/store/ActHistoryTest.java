package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.State;
import org.longsummer.store.ActHistory.Seen;

class ActHistoryTest {
    /** Visits as letters: s steady, d drifting, a act, n a compressor that does not run; a capital letter: work was done. */
    private static ActHistory of(String visits) {
        List<Seen> seen = new ArrayList<>();
        for (char visit : visits.toCharArray()) {
            State state = switch (Character.toLowerCase(visit)) {
                case 's' -> State.STEADY;
                case 'd' -> State.DRIFTING;
                default -> State.ACT;
            };
            seen.add(new Seen(state, Character.toLowerCase(visit) == 'n', Character.isUpperCase(visit)));
        }
        return ActHistory.of(seen);
    }

    @Test
    void anActIsTrueWhenWorkMadeItGoAndFalseWhenItWentWithout() {
        assertEquals(new ActHistory(1, 1, 0, 0, 0, 0, 0), of("sdAs"));
        assertEquals(new ActHistory(1, 1, 0, 0, 0, 0, 0), of("aaAd"), "drifting after work is no longer act");
        assertEquals(new ActHistory(1, 0, 0, 1, 0, 0, 0), of("sas"));
        assertEquals(new ActHistory(1, 0, 0, 1, 0, 0, 0), of("adas"), "drifting without work is not the end of it");
        assertEquals(new ActHistory(2, 1, 0, 1, 0, 0, 0), of("asAs"));
    }

    @Test
    void whatIsNotKnownYetIsCountedAsSuch() {
        assertEquals(new ActHistory(1, 0, 0, 0, 0, 1, 0), of("sa"));
        assertEquals(new ActHistory(1, 0, 0, 0, 0, 1, 0), of("ad"));
        assertEquals(new ActHistory(1, 0, 0, 0, 1, 0, 0), of("aA"), "nobody has read since the work");
        assertEquals(new ActHistory(1, 0, 1, 0, 0, 0, 0), of("Aa"), "it was read again, and it is still act");
        assertEquals(ActHistory.NONE, of("sdS"));
        assertEquals(ActHistory.NONE, of(""));
    }

    @Test
    void aUnitThatQuitWhileItStoodAsSteadyIsAMiss() {
        assertEquals(1, of("sn").misses());
        assertEquals(0, of("an").misses());
        assertEquals(0, of("dn").misses());
        assertEquals(0, of("n").misses(), "nothing was said before");
        assertEquals(1, of("snNsa").misses());
    }
}
