package org.longsummer.access;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What somebody may do, always within the depots that he may see. Each includes the ones before it. */
public enum Right {
    /** Look at units, visits, verdicts and counts. */
    SEE,
    /** Enter units and visits, and correct or withdraw visits of one's own. */
    VISIT,
    /** Change plates, bring files, correct or withdraw anybody's visits, read what was changed. */
    LOOK_AFTER,
    /** People, settings, the demo. */
    ADMINISTER;

    public boolean includes(Right other) {
        return compareTo(other) >= 0;
    }

    /** The lesser of two. */
    public Right atMost(Right other) {
        return includes(other) ? other : this;
    }

    /** Its word in the store and in JSON. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Right> ofWord(String word) {
        return Stream.of(values()).filter(right -> right.word().equals(word)).findFirst();
    }
}
