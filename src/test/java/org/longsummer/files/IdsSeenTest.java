package org.longsummer.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class IdsSeenTest {
    @Test
    void idsAreSeenAsAMapSeesThem() {
        Random chance = new Random(11);
        IdsSeen seen = new IdsSeen();
        Map<String, Long> map = new HashMap<>();
        for (long row = 1; row <= 200_000; row++) {
            String id = (chance.nextBoolean() ? "D" : "N00-") + chance.nextInt(150_000);
            Long earlier = map.putIfAbsent(id, row);
            assertEquals(earlier == null ? 0 : earlier, seen.put(id, row));
        }
        assertTrue(map.size() > 100_000);
    }
}
